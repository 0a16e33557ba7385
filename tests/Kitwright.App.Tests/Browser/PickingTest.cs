using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

public sealed class PickingTest(Chromium chromium)
{
    [Fact]
    public async Task A_click_selects_the_patch_under_it()
    {
        await using var visit = await chromium.Open("/quilts/sample-stars");
        var box = (await visit.Page.Locator(".picking svg").BoundingBoxAsync())!;

        // The middle of the upper left block is the middle of its star.
        await visit.Page.Mouse.ClickAsync(box.X + (box.Width / 4), box.Y + (box.Height / 4));

        await visit.AddressHas("at=place/r1/c1/block/star/patch/1");
        await Assertions.Expect(visit.Page.Locator(".picking .lit")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_finger_takes_the_block_first_and_then_its_patch()
    {
        await using var visit = await chromium.Open("/quilts/sample-stars", 390, touch: true);
        var box = (await visit.Page.Locator(".picking svg").BoundingBoxAsync())!;

        await visit.Page.Touchscreen.TapAsync(box.X + (box.Width / 4), box.Y + (box.Height / 4));
        await visit.AddressHas("at=place/r1/c1");
        await visit.Page.Touchscreen.TapAsync(box.X + (box.Width / 4), box.Y + (box.Height / 4));

        await visit.AddressHas("at=place/r1/c1/block/star/patch/1");
    }

    [Fact]
    public async Task Arrow_keys_move_by_block_and_enter_and_escape_go_in_and_out()
    {
        await using var visit = await chromium.Open("/quilts/sample-stars");
        await visit.Page.Locator(".picking").FocusAsync();

        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await visit.AddressHas("at=place/r1/c1");
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await visit.AddressHas("at=place/r1/c2");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await visit.AddressHas("at=place/r2/c2");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.AddressHas("at=place/r2/c2/block/star/patch/");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.WaitForURLAsync(url => !url.Contains("at=", StringComparison.Ordinal));

        Assert.Equal("application", await visit.Page.EvaluateAsync<string>("document.activeElement.getAttribute('role')"));
    }
}
