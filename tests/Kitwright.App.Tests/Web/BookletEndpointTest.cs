using System.Net;
using Kitwright.App.Tests.Browser;
using UglyToad.PdfPig;

namespace Kitwright.App.Tests.Web;

public sealed class BookletEndpointTest(Chromium chromium)
{
    private const string Stars = "/quilts/ostrel-bay-stars/booklet.pdf";

    [Theory]
    [InlineData("", 612, 792)]
    [InlineData("&paper=letter", 612, 792)]
    [InlineData("&paper=a4", 595, 842)]
    public async Task The_booklet_comes_in_the_colorway_and_on_the_paper_asked_for(string paper, int width, int height)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        var answer = await client.GetAsync($"{Stars}?colorway=Heather%20dusk{paper}", TestContext.Current.CancellationToken);

        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("ostrel-bay-stars-heather-dusk-", answer.Content.Headers.ContentDisposition!.FileName, StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        var cover = pdf.GetPage(1);
        Assert.Equal((width, height), ((int)Math.Round(cover.Width), (int)Math.Round(cover.Height)));
        Assert.Contains("Heather dusk", cover.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/quilts/no-such-quilt/booklet.pdf")]
    [InlineData($"{Stars}?colorway=nobody")]
    [InlineData($"{Stars}?paper=A9")]
    [InlineData($"{Stars}?paper=1")]
    public async Task What_cannot_be_printed_is_not_found(string path)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };

        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(path, TestContext.Current.CancellationToken)).StatusCode);
    }
}
