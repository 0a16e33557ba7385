using Kitwright.App.Planning;
using Kitwright.App.Web;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Kitwright.App.Tests.Browser.Chromium))]

namespace Kitwright.App.Tests.Browser;

/// <summary>The system's Chromium and the running web app, one of each for all tests; tests skip where it is absent.</summary>
public sealed class Chromium : IAsyncLifetime
{
    // No sandbox as tests may run as root; the rest keeps the browser from calling home.
    private static readonly string[] Arguments =
    [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;
    private WebApplication? app;

    public Uri Address { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        app = WebApp.Build(new(0, ShopWorkbench.OfExamples()));
        await app.StartAsync();
        Address = new(app.Urls.Single());
        if (Executable() is { } executable)
        {
            playwright = await Playwright.CreateAsync();
            browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = executable, Args = Arguments });
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
        if (app is not null)
        {
            await app.StopAsync();
            await app.DisposeAsync();
        }
    }

    /// <summary>A fresh browser profile on a screen of this width, watched for what no page may do.</summary>
    public async Task<Visit> Open(string path, int width = 1280, bool touch = false)
    {
        Assert.SkipWhen(browser is null, "skipped: Chromium is absent");
        var context = await browser.NewContextAsync(
            new()
            {
                BaseURL = Address.ToString(),
                ViewportSize = new() { Width = width, Height = 900 },
                HasTouch = touch,
                ReducedMotion = ReducedMotion.Reduce,
            }
        );
        context.SetDefaultTimeout(10_000);
        var visit = new Visit(context, await context.NewPageAsync(), Address);
        await visit.Go(path);
        return visit;
    }

    private static string? Executable() =>
        (
            from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            from name in (string[])["chromium", "chromium-browser", "google-chrome", "chrome.exe"]
            let path = Path.Combine(folder, name)
            where File.Exists(path)
            select path
        ).FirstOrDefault();
}
