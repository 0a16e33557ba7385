using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>A fabric whose print has an up and a repeat: said under Pull, chosen there, drawn under Cut.</summary>
public sealed class PrintsTest(Chromium chromium)
{
    private const string Printed = "fabric,lot,bolt,width,yards,price,color,direction,repeat-along,repeat-across\nOB-101,L853,B001,44,14 3/4,11.80,#f6f0e4,one-way,6,8\n";

    [Fact]
    public async Task What_a_print_asks_for_is_chosen_under_Pull_and_drawn_under_Cut()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/stock", shop: shop);
        await visit.Upload("prints.csv", Printed);
        await Assertions.Expect(visit.Page.GetByText("now one-way print and repeats every 6 in along and 8 in across")).ToBeVisibleAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take it over" }).ClickAsync();
        await Assertions.Expect(visit.Page.GetByText("Changed: one fabric.")).ToBeVisibleAsync();

        await visit.Go("/quilts/ostrel-bay-stars/pull");
        await Assertions.Expect(visit.Page.GetByText("Note: one-way print and repeats every 6 in along and 8 in across.")).ToBeVisibleAsync();
        await visit.Page.GetByLabel("What part of the print the pieces of background show").SelectOptionAsync("yes");
        await visit.AddressHas("try=match.background:yes");
        await Assertions.Expect(visit.Page.GetByText("Fabric A: 13 1/8 yd").Or(visit.Page.GetByText("Fabric A: 13 ⅛ yd")).First).ToBeVisibleAsync();
        await visit.Page.GetByLabel("Where prints with an up stand upright").SelectOptionAsync("withtheblock");
        await visit.AddressHas("prints:withtheblock");

        await visit.Go("/quilts/ostrel-bay-stars/cut");
        var cloth = visit.Page.Locator("[id='cloth/A']");
        await Assertions.Expect(cloth.GetByText("The print runs along the cloth and has an up: no piece is turned.")).ToBeVisibleAsync();
        Assert.Equal(await cloth.Locator(".strip").CountAsync(), await cloth.Locator(".print-arrow").CountAsync());
        await Assertions.Expect(visit.Page.Locator("[id='cloth/B'] .print-arrow")).ToHaveCountAsync(0);
    }
}
