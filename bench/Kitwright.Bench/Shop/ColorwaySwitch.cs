using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Kitwright.Bench.Shop;

/// <summary>
/// Switching the colorway of a quilt of many patches: from the input to the next paint as the browser
/// itself measures it (Event Timing, W3C), which it gives in steps of 8 ms.
/// </summary>
internal static class ColorwaySwitch
{
    private const int Times = 50;

    // The least that the browser reports; a switch that it does not report took less.
    private const int Threshold = 16;

    /// <summary>Milliseconds of each switch; none where there is no Chromium.</summary>
    public static async Task<(int Patches, double[] Milliseconds, double[] Pans)> Measure(Uri address, int columns, int rows)
    {
        var (slug, patches) = await Begin(address, columns, rows);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium(), Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"] }
        );
        var page = await browser.NewPageAsync();
        await page.GotoAsync(new Uri(address, $"/quilts/{slug}").ToString());
        await page.Locator(".sheet[data-live=yes]").WaitForAsync();
        await page.EvaluateAsync(
            $$"""
            () => {
              window.took = 0;
              new PerformanceObserver((list) => {
                for (const entry of list.getEntries()) if (entry.interactionId) window.took = Math.max(window.took, entry.duration);
              }).observe({ type: "event", durationThreshold: {{Threshold}} });
            }
            """
        );
        var chips = page.Locator(".chip");
        var count = await chips.CountAsync();
        var took = new List<double>();
        for (var i = 1; i <= Times; i++)
        {
            await page.EvaluateAsync("window.took = 0");
            await chips.Nth(i % count).ClickAsync();
            // The page behind the picture follows; the next switch waits for it, as a hand does.
            await page.WaitForTimeoutAsync(400);
            took.Add(await page.EvaluateAsync<double>("window.took"));
        }

        return (patches, [.. took], await Pans(page));
    }

    /// <summary>
    /// Milliseconds from a turn of the wheel over the enlarged picture to the task after the frame that shows it moved.
    /// Event Timing leaves scrolling out, so this is by the event's own time and the frame's.
    /// </summary>
    private static async Task<double[]> Pans(IPage page)
    {
        await page.Locator("[data-nearer='1']").ClickAsync();
        await page.Locator("[data-nearer='1']").ClickAsync();
        await page.EvaluateAsync(
            """
            () => {
              const view = document.querySelector(".picking .view");
              let from = 0;
              view.addEventListener("wheel", (event) => (from = event.timeStamp), { passive: true });
              view.addEventListener("scroll", () => requestAnimationFrame(() => setTimeout(() => (window.moved ||= performance.now() - from))));
            }
            """
        );
        await page.Locator(".picking .view").HoverAsync();
        var took = new List<double>();
        for (var i = 0; i < Times; i++)
        {
            await page.EvaluateAsync("window.moved = 0");
            await page.Mouse.WheelAsync(0, i / 5 % 2 == 0 ? 60 : -60);
            await page.WaitForFunctionAsync("() => window.moved > 0");
            took.Add(await page.EvaluateAsync<double>("window.moved"));
        }

        return [.. took];
    }

    /// <summary>The log cabin of the demo with so many blocks.</summary>
    private static async Task<(string Slug, int Patches)> Begin(Uri address, int columns, int rows)
    {
        var quilt = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(ServedShop.Root(), "examples", "quilts", "lantern-steps.json")))!;
        (quilt["name"], quilt["setting"]!["columns"], quilt["setting"]!["rows"]) = ($"Steps {columns} by {rows}", columns, rows);
        using var client = new HttpClient { BaseAddress = address };
        using var body = new StringContent(quilt.ToJsonString(), System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PutAsync(new Uri($"/api/quilts/new/{Guid.NewGuid()}", UriKind.Relative), body);
        answer.EnsureSuccessStatusCode();
        var kept = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        return ((string)kept["slug"]!, columns * rows * quilt["blocks"]![0]!["patches"]!.AsArray().Count);
    }

    public static string Chromium() =>
        (
            from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            from name in (string[])["chromium", "chromium-browser", "google-chrome"]
            let path = Path.Combine(folder, name)
            where File.Exists(path)
            select path
        ).FirstOrDefault() ?? throw new FileNotFoundException("Chromium is needed to measure in a browser.");
}
