using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>The ways that an owner takes through the job.</summary>
public sealed class JourneyTest(Chromium chromium)
{
    private const string Stars = "/quilts/ostrel-bay-stars";

    [Fact]
    public async Task From_the_shelf_to_a_quilt_and_through_its_stops()
    {
        await using var visit = await chromium.Open("/");

        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Ostrel Bay Stars" }).ClickAsync();
        foreach (var stop in (string[])["Pull", "Cut", "Sew", "Kits", "Pattern", "Quilt"])
        {
            await visit.Page.GetByRole(AriaRole.Navigation).GetByRole(AriaRole.Link, new() { Name = stop, Exact = true }).ClickAsync();
            var name = stop == "Quilt" ? "Ostrel Bay Stars" : stop;
            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);
        }
    }

    [Fact]
    public async Task A_patch_leads_to_its_strip_and_the_strip_back_to_the_patch()
    {
        await using var visit = await chromium.Open($"{Stars}?at=place/r1/c1/block/harbor/patch/1");

        await visit.Page.Locator(".touched").GetByRole(AriaRole.Link, new() { Name = "strip 1," }).ClickAsync();
        await visit.AddressHas("/cut?at=cloth/A/strip/1");
        var strip = visit.Page.Locator("[id='cloth/A/strip/1']");
        await Assertions.Expect(strip).ToBeInViewportAsync();
        await Assertions.Expect(strip.Locator("a.lit").First).ToBeAttachedAsync();

        await visit.Page.Locator(".touched").GetByRole(AriaRole.Link, new() { Name = "Show in the quilt" }).ClickAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Ostrel Bay Stars");
        var lit = await visit.Page.Locator(".picking[role=application]").GetAttributeAsync("data-lit");
        Assert.Contains("block/harbor/patch/1", lit!.Split(' '));
    }

    [Fact]
    public async Task What_is_touched_stays_touched_from_stop_to_stop()
    {
        await using var visit = await chromium.Open($"{Stars}/cut");

        await visit.Page.GetByRole(AriaRole.Row).GetByRole(AriaRole.Link, new() { Name = "B1", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".touched")).ToContainTextAsync("Pieces B1");
        await visit.Page.GetByRole(AriaRole.Navigation).GetByRole(AriaRole.Link, new() { Name = "Sew" }).ClickAsync();

        await Assertions.Expect(visit.Page.Locator(".step.lit").First).ToContainTextAsync("B1");
    }

    [Fact]
    public async Task A_change_in_a_sentence_shows_what_it_moves_is_kept_and_undone()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open(Stars, shop: shop);
        var border = visit.Page.GetByLabel("Width of border 2, in inches");
        var before = await border.InputValueAsync();

        await border.SelectOptionAsync("6");
        await visit.AddressHas("try=border.2:6");
        await Assertions.Expect(visit.Page.Locator(".trial")).ToContainTextAsync("The quilt comes to");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await visit.AddressLacks("try=");
        await Assertions.Expect(border).ToHaveValueAsync("6");

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo the last change" }).ClickAsync();
        await Assertions.Expect(border).ToHaveValueAsync(before);
    }

    [Fact]
    public async Task The_booklet_is_downloaded_from_the_pattern_stop()
    {
        await using var visit = await chromium.Open($"{Stars}/pattern?colorway=Rosehip+morning");

        var download = await visit.Page.RunAndWaitForDownloadAsync(() =>
            visit.Page.GetByRole(AriaRole.Link, new() { Name = "Booklet on A4, PDF" }).ClickAsync()
        );

        Assert.Equal("ostrel-bay-stars-rosehip-morning-a4.pdf", download.SuggestedFilename);
        await using var pdf = await download.CreateReadStreamAsync();
        var head = new byte[5];
        await pdf.ReadExactlyAsync(head, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-"u8.ToArray(), head);
    }

    [Fact]
    public async Task A_strip_that_was_cut_stays_ticked_off_after_the_page_is_loaded_again()
    {
        await using var visit = await chromium.Open($"{Stars}/cut");
        var tick = visit.Page.Locator("[data-tick='cloth/A/strip/1#2']");

        await tick.CheckAsync();
        await visit.Go($"{Stars}/cut");

        await Assertions.Expect(tick).ToBeCheckedAsync();
        await Assertions.Expect(visit.Page.Locator("[data-ticked]")).ToHaveTextAsync("1");
        await Assertions.Expect(visit.Page.Locator("[data-ticked-by='cloth/A/strip/1#2']")).ToHaveAttributeAsync("data-done", "");
    }

    [Fact]
    public async Task Less_cloth_is_looked_for_by_the_inch_and_the_usual_plan_comes_back()
    {
        await using var visit = await chromium.Open($"{Stars}/cut");
        var foot = visit.Page.Locator(".foot dd").First;
        var usual = await foot.InnerTextAsync();

        await visit.Page.GetByText("Look for less cloth", new() { Exact = true }).ClickAsync();
        await visit.Page.GetByLabel("How long to look").SelectOptionAsync("while-you-type");
        await visit.Page.GetByLabel("What counts first").SelectOptionAsync(new SelectOptionValue { Label = "by the inch" });
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Look", Exact = true }).ClickAsync();

        var back = visit.Page.GetByRole(AriaRole.Button, new() { Name = "Show the usual plan again" });
        await back.WaitForAsync(new() { Timeout = 120_000 });
        await Assertions.Expect(visit.Page.Locator(".look-steps")).ToContainTextAsync("Fabric A: ");
        await Assertions.Expect(visit.Page.Locator(".look [role=status]")).ToContainTextAsync("Shown is plan");
        await Assertions.Expect(foot).Not.ToHaveTextAsync(usual);

        await back.ClickAsync();
        await Assertions.Expect(foot).ToHaveTextAsync(usual);
    }

    [Fact]
    public async Task Kits_are_counted_again_when_others_are_wanted()
    {
        await using var visit = await chromium.Open($"{Stars}/kits");
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Name = "To order" })).ToBeVisibleAsync();

        foreach (var colorway in (string[])["Harbor lights", "Rosehip morning", "Heather dusk"])
        {
            var wanted = visit.Page.GetByLabel($"Kits of {colorway} wanted");
            await wanted.FillAsync("1");
            // No waiting between them: what is typed fast is kept as well.
            await wanted.PressAsync("Tab");
        }

        await visit.AddressHas("Harbor lights:1,Heather dusk:1,Rosehip morning:1");
        await visit.AddressLacks(":10");

        await Assertions.Expect(visit.Page.GetByText("Nothing: the bolts carry all kits that are wanted.")).ToBeVisibleAsync(new() { Timeout = 120_000 });
    }

    [Fact]
    public async Task By_keyboard_alone_a_colorway_is_chosen_and_a_value_changed()
    {
        await using var visit = await chromium.Open(Stars);
        var focused = visit.Page.Locator(":focus");

        await visit.Tab(until: "input[type=radio]");
        await visit.Press("ArrowDown", "colorway=Rosehip morning");
        await visit.Tab(until: "select.decision");
        await Assertions.Expect(focused).ToHaveAttributeAsync("aria-label", "Blocks across");
        await visit.Press("ArrowDown", "try=columns:6");

        await Assertions.Expect(focused).ToHaveAttributeAsync("aria-label", "Blocks across");
        await Assertions.Expect(visit.Page.Locator(".trial")).ToContainTextAsync("Tried, not kept");
    }
}
