using System.Net;
using Kitwright.App.Tests.Browser;

namespace Kitwright.App.Tests.Web;

/// <summary>The page of the stash, as it comes before any script runs.</summary>
public sealed class StashPageTest(Chromium chromium)
{
    private const string Page = "/quilts/ostrel-bay-stars/stash";

    [Fact]
    public async Task Plenty_of_cloth_is_enough_and_drawn()
    {
        var html = await Get(string.Join('\n', "ABCDEFGHIJKL".Select(letter => $"{letter}: 4 yd of 42")));

        Assert.Contains("It is enough", html, StringComparison.Ordinal);
        Assert.Contains("class=\"cloth-piece\"", html, StringComparison.Ordinal);
        Assert.Contains("Close the guard after each cut", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_little_is_said_with_what_is_missing_and_lines_that_cannot_be_read_are_named()
    {
        var html = await Get("2 fat quarters\nnonsense");

        Assert.Contains("It is not enough", html, StringComparison.Ordinal);
        Assert.Contains("This is no cloth that can be read: nonsense", html, StringComparison.Ordinal);
        // What she wrote is still there.
        Assert.Contains("2 fat quarters\nnonsense</textarea>", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_written_asks_for_it()
    {
        var html = await Get("");

        Assert.Contains("<textarea", html, StringComparison.Ordinal);
        Assert.DoesNotContain("enough:", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cut_page_leads_there()
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        var html = await client.GetStringAsync("/quilts/ostrel-bay-stars/cut", TestContext.Current.CancellationToken);

        Assert.Contains("/quilts/ostrel-bay-stars/stash", html, StringComparison.Ordinal);
        // And what is left of a fabric is listed, as lines that the page reads.
        Assert.Contains("worth keeping", html, StringComparison.Ordinal);
        Assert.Matches("have=[0-9]+%20of%20", html);
    }

    private async Task<string> Get(string have)
    {
        using var client = new HttpClient { BaseAddress = chromium.Address };
        var answer = await client.GetAsync($"{Page}?have={Uri.EscapeDataString(have)}", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
