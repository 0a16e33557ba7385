using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>From the block book to a quilt of one's own and its colorways.</summary>
public sealed class BeginTest(Chromium chromium)
{
    [Fact]
    public async Task A_block_of_the_book_becomes_a_quilt_with_a_plan_and_colorways_of_its_own()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/", shop: shop);
        var page = visit.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Begin a quilt" }).ClickAsync();
        await page.GetByLabel("Name of a block").FillAsync("bear");
        await page.GetByRole(AriaRole.Button, new() { Name = "Find" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Bear" }).ClickAsync();
        await page.GetByLabel("Name of the quilt").FillAsync("Lighthouse paws");
        await page.GetByLabel("Blocks across").FillAsync("3");
        await page.GetByLabel("Blocks down").FillAsync("4");
        await page.GetByLabel("Finished width of the sashing").FillAsync("1 1/2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show it" }).ClickAsync();
        await Assertions.Expect(page.GetByText("set 3 by 4, sashed")).ToBeVisibleAsync();
        await page.Locator("[data-live=yes]").WaitForAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Begin this quilt" }).ClickAsync();
        await visit.AddressHas("/quilts/lighthouse-paws");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Lighthouse paws" })).ToBeVisibleAsync();
        await visit.Go("/quilts/lighthouse-paws/cut");
        await Assertions.Expect(page.GetByText("kinds from")).ToBeVisibleAsync();

        await visit.Go("/quilts/lighthouse-paws/pull");
        await page.GetByLabel("Add a colorway").FillAsync("Storm watch");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await visit.AddressHas("colorway=Storm watch");
        await Assertions.Expect(page.Locator(".chips .chip")).ToHaveCountAsync(2);

        await page.GetByLabel("Add a colorway").FillAsync("storm watch");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Assertions.Expect(page.GetByText("There is a colorway “storm watch” already.")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Leave Storm watch out" }).ClickAsync();
        await Assertions.Expect(page.Locator(".chips .chip")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task What_cannot_be_read_is_said_and_nothing_can_be_begun()
    {
        await using var visit = await chromium.Open("/begin?block=bears-paw&size=wide&rows=1000000");

        await Assertions.Expect(visit.Page.GetByText("“wide” is not a measure.")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin this quilt" })).ToHaveCountAsync(0);
    }
}
