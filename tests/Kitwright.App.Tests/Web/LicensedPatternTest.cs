using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Kitwright.App.Planning;
using Kitwright.App.Tests.Commands;
using Kitwright.App.Web;
using Kitwright.Measure;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Kitwright.Shop;
using Kitwright.Sizes;
using Kitwright.Words;

namespace Kitwright.App.Tests.Web;

/// <summary>
/// Sizes that occur nowhere else are planted in somebody else's pattern, and everything public is searched for them:
/// pages with their alternative texts, pictures with their coordinates, and what is said in place of a booklet.
/// </summary>
public sealed partial class LicensedPatternTest
{
    // 37 seventeenths of an inch and their multiples are in no table and on no ruler.
    private static readonly Length Marker = Length.Inches(new Rational(4 * 37, 17));

    private static Quilt Licensed()
    {
        var quilt = QuiltFile.Read(File.ReadAllText(Run.Stars)).Value!;
        var marked = Resizing.Of(quilt, Resizing.ChoiceOf(quilt) with { Block = Marker, Borders = [Marker / 4, Marker / 2] });
        return marked with { Name = "Marked Pattern", Licensed = new("Somebody Else", true, true, true, ShowDrawing: true, true) };
    }

    [Fact]
    public async Task Nothing_public_tells_a_size()
    {
        var cancel = TestContext.Current.CancellationToken;
        var quilt = Licensed();
        using var store = ShopStore.Open(Scratch.File("shop.db"), TimeProvider.System);
        var begun = (await store.Projects.Begin(Guid.NewGuid(), quilt.Name, QuiltFile.Write(quilt), Message.Of("revision.opened"), "test", cancel)).Value!;
        await using var app = WebApp.Build(new(0, await ShopWorkbench.OfStore(store, cancel), store));
        await app.StartAsync(cancel);
        using var client = new HttpClient { BaseAddress = new(app.Urls.Single()) };
        var slug = begun.Project.Slug;

        foreach (var path in (string[])[$"/public/{slug}", $"/quilts/{slug}/picture.svg", $"/quilts/{slug}/picture.png?width=100", $"/quilts/{slug}/booklet.pdf", $"/quilts/{slug}/templates.pdf", $"/quilts/{slug}/bag.pdf?form=strip-cut", .. Api(slug)])
        {
            var answer = await client.GetAsync(path, cancel);
            var bytes = await answer.Content.ReadAsByteArrayAsync(cancel);
            Assert.Empty(Told(Encoding.UTF8.GetString(bytes), quilt).Select(marker => $"{path}: {marker}"));
            // The shop's own file holds sizes, and is linked from the shop's own pages only.
            Assert.DoesNotContain("quilt.json", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        }

        var booklet = await client.GetAsync($"/quilts/{slug}/booklet.pdf", cancel);
        Assert.Equal(HttpStatusCode.Forbidden, booklet.StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await client.GetAsync($"/quilts/{slug}/templates.pdf", cancel)).StatusCode);
        Assert.All(
            await Task.WhenAll(Api(slug).Select(path => client.GetAsync(path, cancel))),
            answer => Assert.Equal(answer.RequestMessage!.RequestUri!.AbsolutePath.EndsWith("/draw", StringComparison.Ordinal) ? HttpStatusCode.OK : HttpStatusCode.Forbidden, answer.StatusCode)
        );
        await app.StopAsync(cancel);
    }

    private static IEnumerable<string> Api(string slug) =>
        ((string[])["", "/plan", "/sew", "/sizes?target=60x80", "/accuracy?quilts=100", "/stash?have=3%20yd", "/templates", "/bag?form=yardage", "/booklet", "/draw"]).Select(verb => $"/api/quilts/{slug}{verb}");

    /// <summary>The search itself finds a size where there is one: in the shop's own picture of the same quilt.</summary>
    [Fact]
    public void The_search_finds_what_it_looks_for()
    {
        var own = Licensed() with { Licensed = null };
        Assert.NotEmpty(Told(QuiltPictureFile.Of(own, null, Kitwright.Fabrics.Shelf.Empty).Svg, own));
        Assert.NotEmpty(Told($"blocks of {LengthText.Inches(Marker)} in", own));
    }

    // Every planted size as a fraction and as a decimal of two places or more.
    private static IEnumerable<string> Told(string text, Quilt quilt)
    {
        var design = Layout.Of(quilt);
        foreach (var length in quilt.Borders.Select(b => b.Width).Concat([Marker, design.Width, design.Height]))
        {
            var fraction = LengthText.Inches(length);
            var number = length.InInches.ToDouble().ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
            if (text.Contains(fraction, StringComparison.Ordinal))
            {
                yield return fraction;
            }

            if (Decimals().Matches(text).Any(match => match.Value.StartsWith(number[..^1], StringComparison.Ordinal) && Math.Abs(double.Parse(match.Value, System.Globalization.CultureInfo.InvariantCulture) - length.InInches.ToDouble()) < 0.0006))
            {
                yield return number;
            }
        }
    }

    [GeneratedRegex(@"\d+\.\d{2,}")]
    private static partial Regex Decimals();
}
