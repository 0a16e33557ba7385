using System.Net;
using Kitwright.App.Tests.Browser;

namespace Kitwright.App.Tests.Web;

public sealed class NotFoundTest(Chromium chromium)
{
    [Theory]
    [InlineData("/no-such-page")]
    [InlineData("/quilts/no-such-quilt")]
    [InlineData("/quilts/no-such-quilt/cut")]
    public async Task What_is_not_there_is_said_to_be_not_there(string path)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        var answer = await client.GetAsync(path, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is no such page", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/quilts/ostrel-bay-stars?colorway=nobody")]
    [InlineData("/quilts/ostrel-bay-stars?at=place/r99/c1&try=columns:nine,,border.7:1,:")]
    [InlineData("/quilts/ostrel-bay-stars?try=columns:99999999")]
    [InlineData("/quilts/ostrel-bay-stars/pull?try=fabric.star:none")]
    [InlineData("/quilts/ostrel-bay-stars/kits?kits=Harbor+lights:-1,nobody:7,Heather+dusk")]
    public async Task An_address_with_nonsense_in_it_shows_the_page_all_the_same(string path)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        var answer = await client.GetAsync(path, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }
}
