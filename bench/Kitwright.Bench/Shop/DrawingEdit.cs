using Microsoft.Playwright;

namespace Kitwright.Bench.Shop;

/// <summary>
/// An edit of a drawn block, from the click to the first frame that shows its answer: the log is on disk by then, the
/// exact partition checked, and the straight seams found.
/// </summary>
internal static class DrawingEdit
{
    private const int Times = 50;

    /// <summary>Milliseconds of each edit, by the browser's clock.</summary>
    public static async Task<double[]> Measure(Uri address)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = ColorwaySwitch.Chromium(), Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"] }
        );
        var page = await browser.NewPageAsync();
        await page.GotoAsync(new Uri(address, "/quilts/lantern-steps/draw").ToString());
        await page.Locator(".sheet[data-live=yes]").WaitForAsync();
        // Event times and frame times are of one clock.
        await page.EvaluateAsync(
            """
            () => {
              let from = 0;
              window.took = 0;
              document.addEventListener("click", (event) => (from = event.timeStamp), true);
              new MutationObserver(() => requestAnimationFrame((now) => (window.took ||= Math.max(now, performance.now()) - from))).observe(
                document.querySelector(".board svg"), { subtree: true, childList: true, attributes: true });
            }
            """
        );
        var turn = page.Locator(".drawing-says button", new() { HasTextString = "Turn" }).First;
        var took = new List<double>();
        for (var i = 0; i < Times; i++)
        {
            await page.EvaluateAsync("window.took = 0");
            await turn.ClickAsync();
            await page.WaitForFunctionAsync("() => window.took > 0");
            took.Add(await page.EvaluateAsync<double>("window.took"));
        }

        return [.. took.Order()];
    }
}
