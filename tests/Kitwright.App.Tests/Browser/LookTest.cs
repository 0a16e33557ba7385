using Deque.AxeCore.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>What holds for every page at every width.</summary>
public sealed class LookTest(Chromium chromium)
{
    private const string Stars = "/quilts/ostrel-bay-stars";

    [Theory]
    [InlineData("/")]
    [InlineData(Stars)]
    [InlineData($"{Stars}?at=place/r1/c2")]
    [InlineData($"{Stars}?try=border.2:6")]
    [InlineData($"{Stars}/cut?at=piece/A1")]
    [InlineData($"{Stars}/sew?at=block/harbor")]
    [InlineData("/quilts/skerry-lights/cut")]
    [InlineData($"{Stars}/pull?at=cloth/B")]
    [InlineData($"{Stars}/kits")]
    [InlineData($"{Stars}/pattern")]
    [InlineData($"{Stars}/stash?have=8%20fat%20quarters")]
    [InlineData("/shop/stock")]
    [InlineData("/shop/terms")]
    [InlineData("/shop/terms?try=sold-by:meter,steps:quarter-meters")]
    [InlineData("/quilts/lantern-steps")]
    [InlineData("/quilts/lantern-steps/settings?repeat=3")]
    [InlineData($"{Stars}/sizes?for=bed-twin&drawup=4")]
    [InlineData($"{Stars}/draw")]
    [InlineData($"{Stars}/files")]
    [InlineData("/open")]
    [InlineData("/blocks")]
    [InlineData("/blocks?family=star")]
    [InlineData("/begin?block=bears-paw&sashing=2")]
    [InlineData("/begin?block=bears-paw&units=cm&rows=no&border=4000")]
    [InlineData($"{Stars}/license")]
    public async Task A_page_fits_every_width_and_axe_finds_nothing_serious(string path)
    {
        await using var visit = await chromium.Open(path, 1280);
        foreach (var width in (int[])[1280, 820, 390])
        {
            await visit.Page.SetViewportSizeAsync(width, 900);
            Assert.True(await Width(visit) <= width, $"wider than {width}");
        }

        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(ControlsBelow44Pixels));
        await visit.Page.EvaluateAsync(ThinDrawings);
        await NothingSerious(visit);
        if (path is "/" or Stars)
        {
            // Wide and narrow pages are one document: what differs is the header and the two columns, alike on all.
            await visit.Page.SetViewportSizeAsync(1280, 900);
            await NothingSerious(visit);
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData(Stars)]
    [InlineData($"{Stars}/pull")]
    [InlineData($"{Stars}/cut")]
    [InlineData($"{Stars}/sew")]
    [InlineData($"{Stars}/kits")]
    [InlineData($"{Stars}/pattern")]
    [InlineData("/shop/stock")]
    [InlineData("/shop/terms")]
    public async Task A_page_fits_a_phone_with_type_twice_as_large(string path)
    {
        await using var visit = await chromium.Open(path, 390);

        await visit.Page.EvaluateAsync("document.documentElement.style.fontSize = '200%'");

        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(BeyondTheScreen));
    }

    // What scrolls in a box of its own stays on the screen.
    private const string BeyondTheScreen = """
        document.documentElement.scrollWidth <= innerWidth ? [] :
          [...document.querySelectorAll("main *, header *")]
            .filter((part) => part.getBoundingClientRect().right > innerWidth + 0.5 && !part.closest(".wide > *"))
            .map((part) => part.outerHTML.slice(0, 100))
        """;

    // Patches of one drawing are alike to axe, which spends seconds on thousands of them: the first hundred stay.
    private const string ThinDrawings = """
        for (const drawing of document.querySelectorAll("svg")) {
          [...drawing.querySelectorAll(":not(defs, a, [tabindex], text)")].slice(100).reverse()
            .filter((part) => part.childElementCount === 0).forEach((part) => part.remove());
        }
        """;

    private const string ControlsBelow44Pixels = """
        [...document.querySelectorAll("button, .button, select, input[type=number], label:has(input), summary, .stops a, .chain a, .cut-list th a")]
          .filter((control) => control.getBoundingClientRect().height > 0 && control.getBoundingClientRect().height < 43.9)
          .map((control) => control.outerHTML.slice(0, 100))
        """;

    private static Task<int> Width(Visit visit) => visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");

    private static async Task NothingSerious(Visit visit)
    {
        var findings = await visit.Page.RunAxe();
        Assert.DoesNotContain(
            findings.Violations.Select(v => $"{v.Impact} {v.Id}: {v.Nodes[0].Html}"),
            v => v.StartsWith("serious", StringComparison.Ordinal) || v.StartsWith("critical", StringComparison.Ordinal)
        );
    }
}
