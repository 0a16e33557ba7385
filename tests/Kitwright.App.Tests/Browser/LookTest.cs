using Deque.AxeCore.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>What holds for every page at every width.</summary>
public sealed class LookTest(Chromium chromium)
{
    public static TheoryData<string, int> PagesAndWidths()
    {
        var data = new TheoryData<string, int>();
        foreach (var page in (string[])["/", "/quilts/sample-stars", "/quilts/sample-stars?at=place/r1/c2/block/star/patch/3"])
        {
            foreach (var width in (int[])[1280, 820, 390])
            {
                data.Add(page, width);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task The_page_fits_the_width_and_axe_finds_nothing_serious(string path, int width)
    {
        await using var visit = await chromium.Open(path, width);

        Assert.True(await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        var findings = await visit.Page.RunAxe();
        Assert.DoesNotContain(
            findings.Violations.Select(v => $"{v.Impact} {v.Id}: {v.Nodes[0].Html}"),
            v => v.StartsWith("serious", StringComparison.Ordinal) || v.StartsWith("critical", StringComparison.Ordinal)
        );
    }
}
