using Kitwright.App.Tests.Browser;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Shop;

public sealed class StockPageTest(Chromium chromium)
{
    private const string Odd = "SKU;lot;width;left;price;color\nF-1;L1;44;11,5 yd;12,90;#3a5f8c\nF-2;L7;44;3/8;9;#aa3344\n";

    [Fact]
    public async Task Columns_are_matched_by_hand_what_would_change_is_seen_first_and_the_names_are_remembered()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/stock", shop: shop);
        await visit.Upload("till.csv", Odd);
        await Assertions.Expect(visit.Page.GetByText("There is no column “fabric”.")).ToBeVisibleAsync();

        await visit.Page.GetByLabel("Stock number of the fabric").SelectOptionAsync("SKU");
        await visit.Page.GetByLabel("Length left on the bolt").SelectOptionAsync("left");
        await Assertions.Expect(visit.Page.GetByText("This would add 2 fabrics and 2 bolts")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.GetByText("Bolt F-1-1 of F-1, lot L1: 11 1/2 yd")).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it over" }).ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("Added: 2 fabrics and 2 bolts.")).ToBeVisibleAsync();

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Another file" }).ClickAsync();
        await visit.Upload("till.csv", Odd.Replace("12,90", "13,50", StringComparison.Ordinal));
        await Assertions.Expect(visit.Page.GetByText("F-1, F-1: price 12.90, now 13.50")).ToBeVisibleAsync();

        await visit.Go("/quilts/ostrel-bay-stars/pull");
        await Assertions.Expect(visit.Page.GetByLabel("Fabric of the background").Locator("option[value='F-2']")).ToBeAttachedAsync();
    }

    [Fact]
    public async Task What_is_at_fault_stands_beside_its_line_and_nothing_can_be_saved()
    {
        await using var visit = await chromium.Open("/shop/stock");

        await visit.Page.GetByLabel("Or paste the table here").FillAsync("fabric,lot,width,yards,price,color\nF,L,44,=A1,9,#112233\nG,L,44,5,9,blue\n");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Read what is pasted" }).ClickAsync();

        var fault = visit.Page.Locator(".findings li");
        await Assertions.Expect(fault).ToHaveCountAsync(2);
        await Assertions.Expect(fault.Nth(0)).ToContainTextAsync("Line 2");
        await Assertions.Expect(fault.Nth(0)).ToContainTextAsync("F | L | 44 | =A1");
        await Assertions.Expect(fault.Nth(1)).ToContainTextAsync("is not a color");
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it over" })).ToHaveCountAsync(0);
    }
}
