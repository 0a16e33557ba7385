using Kitwright.App.Tests.Browser;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Shop;

public sealed class TermsPageTest(Chromium chromium)
{
    [Fact]
    public async Task Terms_are_tried_in_their_sentence_kept_and_move_every_plan()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/terms", shop: shop);
        var trial = visit.Page.Locator(".trial");

        // No waiting between them: what is chosen fast is kept as well.
        await visit.Page.GetByLabel("Steps in which cloth is cut").SelectOptionAsync("wholes");
        await visit.Page.GetByLabel("Spare strips in each length of a kit").SelectOptionAsync("0");
        await visit.AddressHas("try=steps:wholes,spare:0");
        await Assertions.Expect(trial).ToContainTextAsync("Ostrel Bay Stars: ");
        await trial.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await visit.AddressLacks("try=");
        await Assertions.Expect(visit.Page.GetByLabel("Steps in which cloth is cut")).ToHaveValueAsync("wholes");

        await visit.Go("/quilts/ostrel-bay-stars/cut");
        foreach (var yards in await visit.Page.Locator(".yards strong").AllInnerTextsAsync())
        {
            Assert.Matches(@"^\d+\syd$", yards);
        }
    }

    [Fact]
    public async Task A_shop_that_sells_by_the_meter_chooses_in_centimeters()
    {
        await using var visit = await chromium.Open("/shop/terms");

        await visit.Page.GetByLabel("What cloth is sold by").SelectOptionAsync("meter");
        await visit.AddressHas("try=sold-by:meter");

        await Assertions.Expect(visit.Page.GetByLabel("Usable width")).ToHaveValueAsync("100 cm");
        await visit.Page.GetByLabel("Steps in which cloth is cut").SelectOptionAsync("tens-quarter-meters");
        await visit.AddressHas("try=sold-by:meter,steps:tens-quarter-meters");
    }

    /// <summary>Stars have geese and no technique of their own: the shop's is planned, and a choice of the quilt goes before it.</summary>
    [Fact]
    public async Task How_the_shop_makes_its_units_is_kept_and_planned()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/terms", shop: shop);
        await visit.Page.GetByLabel("How flying geese are made").SelectOptionAsync("four");
        await visit.AddressHas("try=goose:four");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await visit.AddressLacks("try=");
        await Assertions.Expect(visit.Page.GetByLabel("How flying geese are made")).ToHaveValueAsync("four");

        await visit.Go("/quilts/ostrel-bay-stars/sew");
        await Assertions.Expect(visit.Page.Locator("[id='technique.goose'] tr.lit")).ToContainTextAsync("four at a time");
        await Assertions.Expect(visit.Page.Locator("[id='technique.goose'] tr.lit")).ToContainTextAsync("as the shop makes them");
        await visit.Page.Locator("[id='technique.goose']").GetByRole(AriaRole.Link, new() { Name = "from single triangles" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("[id='technique.goose'] tr.lit")).ToContainTextAsync("own choice");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Make them as the shop does" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("[id='technique.goose'] tr.lit")).ToContainTextAsync("four at a time");
    }

    [Fact]
    public async Task What_counts_first_and_the_layers_of_a_strip_are_kept_and_said_on_the_cut_page()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/terms", shop: shop);

        await visit.Page.GetByLabel("What counts first").SelectOptionAsync("settings");
        await visit.Page.GetByLabel("Layers in which strips are sub-cut").SelectOptionAsync("two");
        await visit.AddressHas("try=first:settings,layers:two");
        await Assertions.Expect(visit.Page.GetByLabel("What counts second")).ToHaveValueAsync("purchase");
        await visit.Page.Locator(".trial").GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await visit.AddressLacks("try=");

        await visit.Go("/quilts/ostrel-bay-stars/cut");
        await Assertions.Expect(visit.Page.Locator(".look")).ToContainTextAsync("What counts first is the fewest ruler settings, then the least cloth");
        await Assertions.Expect(visit.Page.Locator(".cloth").First).ToContainTextAsync("Fold each strip once, selvage to selvage: two layers a pass.");
    }

    [Fact]
    public async Task The_ruler_is_said_in_its_sentence_and_longer_cuts_are_told_on_the_cut_page()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/terms", shop: shop);
        var ruler = visit.Page.GetByLabel("Length of the ruler");
        await Assertions.Expect(ruler).ToHaveValueAsync("unsaid");

        await ruler.SelectOptionAsync("18 in");
        await visit.AddressHas("try=ruler:18 in");
        await visit.Page.Locator(".trial").GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await visit.AddressLacks("try=");
        await Assertions.Expect(ruler).ToHaveValueAsync("18 in");

        await visit.Go("/quilts/ostrel-bay-stars/cut");
        var cloth = visit.Page.Locator(".cloth").First;
        await Assertions.Expect(cloth).ToContainTextAsync("and the ruler 18 in: fold the cloth 2 times, or lay a second ruler");
        await Assertions.Expect(cloth).ToContainTextAsync("The ruler of 18 in is laid down");
    }

    [Fact]
    public async Task Terms_that_cannot_be_are_said_and_not_kept()
    {
        await using var visit = await chromium.Open("/shop/terms?try=width:-3 in,currency:dollars,nonsense:1");

        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(3);
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it" })).ToHaveCountAsync(0);
    }
}
