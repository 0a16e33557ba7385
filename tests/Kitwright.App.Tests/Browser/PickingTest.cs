using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

public sealed class PickingTest(Chromium chromium)
{
    private const string Stars = "/quilts/ostrel-bay-stars";

    [Fact]
    public async Task A_click_selects_the_patch_under_it()
    {
        await using var visit = await chromium.Open(Stars);

        // The middle of the second block's upper edge, a quarter inch inside: the sky-colored side of a flying goose.
        var (x, y) = await visit.OnQuilt(8.5 + 6, 8.5 + 0.25);
        await visit.Page.Mouse.ClickAsync(x, y);

        await visit.AddressHas("at=place/r1/c1/block/harbor/patch/1");
        await Assertions.Expect(visit.Page.Locator(".touched")).ToContainTextAsync("A1");
    }

    [Fact]
    public async Task A_finger_takes_the_block_first_and_then_its_patch()
    {
        await using var visit = await chromium.Open(Stars, 390, touch: true);

        var (x, y) = await visit.OnQuilt(8.5 + 6, 8.5 + 0.25);
        await visit.Page.Touchscreen.TapAsync(x, y);
        await visit.AddressHas("at=place/r1/c1");
        var enlarged = visit.Page.Locator(".enlarged svg");
        await enlarged.WaitForAsync();
        await enlarged.ScrollIntoViewIfNeededAsync();
        var box = (await enlarged.BoundingBoxAsync())!;
        await visit.Page.Touchscreen.TapAsync(box.X + (box.Width / 2), box.Y + (box.Height / 48));

        await visit.AddressHas("at=place/r1/c1/block/harbor/patch/1");
    }

    [Fact]
    public async Task Arrow_keys_move_by_block_and_enter_and_escape_go_in_and_out()
    {
        await using var visit = await chromium.Open(Stars);
        await visit.Page.Locator(".picking").FocusAsync();

        await visit.Press("ArrowRight", "at=place/r1/c1");
        await visit.Press("ArrowRight", "at=place/r1/c2");
        await visit.Press("ArrowDown", "at=place/r2/c2");
        await visit.Press("Shift+ArrowDown", "at=frame/");
        await visit.Press("ArrowUp", "at=place/r2/c2");
        await visit.Press("Enter", "at=place/r2/c2/block/harbor/patch/");
        await visit.Press("Escape", "at=place/r2/c2");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.AddressLacks("at=");

        Assert.Equal("application", await visit.Page.EvaluateAsync<string>("document.activeElement.getAttribute('role')"));
    }
}
