using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

public sealed class ColorwayTest(Chromium chromium)
{
    [Fact]
    public async Task A_colorway_is_switched_without_loading_the_page_again()
    {
        await using var visit = await chromium.Open("/quilts/ostrel-bay-stars");
        await visit.Page.EvaluateAsync("window.stayed = true");
        var star = visit.Page.Locator(".picking .block [data-role=star]").First;
        var before = await star.GetAttributeAsync("fill");

        await visit.Page.GetByRole(AriaRole.Radio, new() { Name = "Heather dusk" }).CheckAsync();

        Assert.NotEqual(before, await star.GetAttributeAsync("fill"));
        await visit.AddressHas("colorway=Heather dusk");
        await Assertions.Expect(star).ToHaveAttributeAsync("fill", new System.Text.RegularExpressions.Regex("cloth-OB_2d602"));
        Assert.True(await visit.Page.EvaluateAsync<bool>("window.stayed"));
    }

    [Fact]
    public async Task The_picture_is_enlarged_and_pans_and_a_patch_is_still_picked_in_it()
    {
        await using var visit = await chromium.Open("/quilts/ostrel-bay-stars");
        var view = visit.Page.Locator(".picking .view");
        var before = await view.EvaluateAsync<double>("view => view.querySelector('svg').getBoundingClientRect().width");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Larger", Exact = true }).ClickAsync();
        Assert.Equal(2 * before, await view.EvaluateAsync<double>("view => view.querySelector('svg').getBoundingClientRect().width"), 40.0);
        Assert.True(await view.EvaluateAsync<bool>("view => { view.scrollTo(0, 0); view.scrollBy(40, 60); return view.scrollLeft === 40 && view.scrollTop === 60; }"));
        await view.ClickAsync();
        await visit.AddressHas("at=place/");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Smaller", Exact = true }).ClickAsync();
        Assert.Equal(before, await view.EvaluateAsync<double>("view => view.querySelector('svg').getBoundingClientRect().width"), 1.0);
    }

    [Fact]
    public async Task The_address_alone_brings_the_colorway_back()
    {
        await using var visit = await chromium.Open("/quilts/ostrel-bay-stars?colorway=Heather dusk");

        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Radio, new() { Name = "Heather dusk" })).ToBeCheckedAsync();
    }
}
