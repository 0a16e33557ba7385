using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>Drawing a block by hand, by finger and by keyboard; what is drawn outlives the page.</summary>
public sealed class DrawingTest(Chromium chromium)
{
    private const string Page = "/quilts/ostrel-bay-stars/draw";

    private static async Task Counts(Visit visit, int patches) =>
        await Assertions.Expect(visit.Page.Locator(".board .patch")).ToHaveCountAsync(patches);

    private static ILocator Button(Visit visit, string name) => visit.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    // Grid points come row by row from the lower left.
    private static ILocator Dot(Visit visit, int index) => visit.Page.Locator(".board .hit").Nth(index);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_seam_is_sewn_undone_kept_over_a_reload_and_put_into_the_quilt(bool touch)
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, touch: touch, shop: shop))
        {
            await Button(visit, "Begin with an empty block").ClickAsync();
            await Counts(visit, 1);
            var columns = int.Parse((await visit.Page.Locator("input[type=number]").InputValueAsync())!, System.Globalization.CultureInfo.InvariantCulture);
            await (touch ? Dot(visit, 0).TapAsync() : Dot(visit, 0).ClickAsync());
            await (touch ? Dot(visit, ((columns + 1) * (columns + 1)) - 1).TapAsync() : Dot(visit, ((columns + 1) * (columns + 1)) - 1).ClickAsync());
            await Button(visit, "Sew a seam").ClickAsync();
            await Counts(visit, 2);
            await Button(visit, "Undo").ClickAsync();
            await Counts(visit, 1);
            await Button(visit, "Redo").ClickAsync();
            await Counts(visit, 2);

            // As after a crash, or in another tab.
            await visit.Go(Page);
            await Counts(visit, 2);
            await Assertions.Expect(visit.Page.GetByText("Can be pieced with straight seams.")).ToBeVisibleAsync();
            await Button(visit, "Put it into the quilt").ClickAsync();
            await visit.Page.WaitForURLAsync("**/quilts/ostrel-bay-stars");
            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo the last change" })).ToBeVisibleAsync();
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task A_seam_that_ends_in_a_patch_is_refused_at_its_place_by_keyboard()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, shop: shop))
        {
            await Button(visit, "Begin with an empty block").ClickAsync();
            await Counts(visit, 1);
            await visit.Page.Locator(".board").FocusAsync();
            foreach (var key in (string[])["Enter", "ArrowRight", "ArrowUp", "Enter"])
            {
                await visit.Page.Keyboard.PressAsync(key);
            }

            await Assertions.Expect(Button(visit, "Sew a seam")).ToBeVisibleAsync();
            await visit.Page.Keyboard.PressAsync("s");
            await Assertions.Expect(visit.Page.Locator(".board .wrong")).ToHaveCountAsync(1);
            await Assertions.Expect(visit.Page.GetByText("in the middle of a patch")).ToBeVisibleAsync();
            await Counts(visit, 1);
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task A_block_of_the_book_is_taken_an_odd_grid_drawn_on_and_a_part_copied()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, shop: shop))
        {
            var before = await visit.Page.Locator(".board .patch").CountAsync();
            await visit.Page.GetByLabel("A block of the book in place of the drawing").SelectOptionAsync(new SelectOptionValue { Label = "Churn dash" });
            // Four half-square triangle units, four of two bars, and the middle.
            await Counts(visit, 17);
            await Button(visit, "Undo").ClickAsync();
            await Counts(visit, before);

            await Button(visit, "Begin with an empty block").ClickAsync();
            await Counts(visit, 1);
            await visit.Page.GetByLabel("Divisions of the grid across").FillAsync("7");
            await visit.Page.GetByLabel("Divisions of the grid across").PressAsync("Tab");
            await Assertions.Expect(visit.Page.Locator(".board .hit")).ToHaveCountAsync(64);
            // From the lower edge to the upper, two sevenths from the left.
            await Dot(visit, 2).ClickAsync();
            await Dot(visit, 58).ClickAsync();
            await Button(visit, "Sew a seam").ClickAsync();
            await Counts(visit, 2);
            await Dot(visit, 0).ClickAsync();
            await Dot(visit, 58).ClickAsync();
            await Button(visit, "Copy this part to the other side, mirrored").ClickAsync();
            await Counts(visit, 3);
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>A pasted drawing with a fault is shown as it is, the fault outlined, and is still there after a reload.</summary>
    [Theory]
    [InlineData("""["0","0"],["2","2"],["2","0"],["0","2"]""", "crosses itself")]
    [InlineData("""["0","0"],["3","0"],["3","2"],["0","2"]""", "reaches out of the block")]
    [InlineData("""["0","0"],["1","1"],["2","2"]""", "back over itself")]
    public async Task A_pasted_fault_is_outlined_and_kept(string corners, string said)
    {
        var file =
            """{ "format": "kitwright-block", "version": 1, "id": "b", "name": "B", "family": "fourPatch", "grid": { "columns": 2, "rows": 2 }, "roles": [{ "id": "a", "name": "a" }], "patches": [{ "id": "1", "role": "a", "corners": [ CORNERS ] }] }"""
                .Replace("CORNERS", corners, StringComparison.Ordinal);
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, shop: shop))
        {
            await visit.Page.GetByText("Paste").First.ClickAsync();
            await visit.Page.Locator(".drawing-says textarea").FillAsync(file);
            await visit.Page.Locator(".drawing-says details button").ClickAsync();
            await Assertions.Expect(visit.Page.Locator(".board.faulty path.wrong")).ToHaveCountAsync(1);
            await Assertions.Expect(visit.Page.Locator(".refused").First).ToContainTextAsync(said);
            await visit.Go(Page);
            await Assertions.Expect(visit.Page.Locator(".board.faulty path.wrong")).ToHaveCountAsync(1);
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task A_patch_narrower_than_its_seam_allowances_is_outlined()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, shop: shop))
        {
            await Button(visit, "Begin with an empty block").ClickAsync();
            await Counts(visit, 1);
            await visit.Page.GetByLabel("Divisions of the grid across").FillAsync("40");
            await visit.Page.GetByLabel("Divisions of the grid across").PressAsync("Tab");
            await Assertions.Expect(visit.Page.Locator(".board .hit")).ToHaveCountAsync(41 * 41);
            await Dot(visit, 1).ClickAsync();
            await Dot(visit, (40 * 41) + 1).ClickAsync();
            await Button(visit, "Sew a seam").ClickAsync();
            await Counts(visit, 2);
            await Assertions.Expect(visit.Page.Locator(".board .set-in")).ToHaveCountAsync(1);
            await Assertions.Expect(visit.Page.GetByText("narrower than both seam allowances")).ToBeVisibleAsync();
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task Two_tabs_lose_nothing_to_each_other()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open(Page, shop: shop))
        {
            await using var other = await chromium.Open(Page, shop: shop);
            var before = await visit.Page.Locator(".board .patch").CountAsync();
            await Button(visit, "Begin with an empty block").ClickAsync();
            await Counts(visit, 1);
            // The other tab still shows the old drawing; its edit comes after, and undo leads back to both.
            await Button(other, "Turn").ClickAsync();
            await Counts(other, before);
            await Button(other, "Undo").ClickAsync();
            await Counts(other, 1);
            await Button(other, "Undo").ClickAsync();
            await Counts(other, before);
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }
}
