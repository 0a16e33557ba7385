using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>What a person enters about their own hands holds for them, also when they come back.</summary>
public sealed class SewPageTest(Chromium chromium)
{
    private const string Sew = "/quilts/ostrel-bay-stars/sew";

    [Fact]
    public async Task One_s_own_times_are_kept_and_tell_the_hours()
    {
        await using var visit = await chromium.Open(Sew);
        var details = visit.Page.Locator(".own-times");
        await details.Locator("summary").ClickAsync();
        await details.GetByLabel("Press a seam: how many you did").FillAsync("20");
        await details.GetByLabel("Press a seam: in how many seconds").FillAsync("none");
        await details.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(details.GetByRole(AriaRole.Status)).ToContainTextAsync("is no time");
        await Assertions.Expect(visit.Page.GetByText("By your own times")).ToHaveCountAsync(0);

        await details.GetByLabel("Press a seam: in how many seconds").FillAsync("190");
        await details.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(details.GetByRole(AriaRole.Status)).ToContainTextAsync("Kept.");
        await Assertions.Expect(visit.Page.GetByText("By your own times").First).ToBeVisibleAsync();

        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.GetByText("By your own times").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_ruler_is_drawn_for_the_left_hand_on_request()
    {
        await using var visit = await chromium.Open(Sew);
        var picture = visit.Page.Locator(".trim-lines svg").First;
        var right = await picture.InnerHTMLAsync();
        await visit.Page.GetByLabel("Draw the ruler for the left hand").CheckAsync();

        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.GetByLabel("Draw the ruler for the left hand")).ToBeCheckedAsync();
        Assert.NotEqual(right, await picture.InnerHTMLAsync());
    }
}
