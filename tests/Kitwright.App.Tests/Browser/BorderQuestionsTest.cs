using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>The questions about borders, columns and rings: an answer is tried, said in the sentence and kept.</summary>
public sealed class BorderQuestionsTest(Chromium chromium)
{
    private const string Page = "/quilts/tidemark-nine-patch";

    [Fact]
    public async Task A_border_is_pieced_from_triangles_kept_and_asked_how_it_comes_out()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page + "/settings", shop: shop))
        {
            await visit.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("Pieced from: Half-square triangle") }).First.ClickAsync();
            await visit.Page.WaitForURLAsync("**try=border-pieced.1*");
            await Assertions.Expect(visit.Page.Locator(".sentences").First).ToContainTextAsync(new Regex("in of Half-square triangle units, 46 by 51, with coping strips"));
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo the last change" })).ToBeVisibleAsync();

            await visit.Go(Page + "/settings");
            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Name = "How do the units of border 1 come out?" })).ToBeVisibleAsync();
            await Assertions.Expect(visit.Page.Locator(".answers .refused")).ToContainTextAsync("can’t come out");
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData("Every other column dropped by half a block", "every other column dropped")]
    [InlineData("Strips between the columns", "between the columns")]
    [InlineData("One block, with plain and pieced rings round it", "Half-square triangle units")]
    public async Task Columns_and_rings_are_tried(string answer, string said)
    {
        await using var visit = await chromium.Open(Page + "/settings");
        await visit.Page.GetByRole(AriaRole.Link, new() { NameRegex = new(Regex.Escape(answer)) }).First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".sentences").First).ToContainTextAsync(said);
    }
}
