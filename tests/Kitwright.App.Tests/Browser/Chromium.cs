using Kitwright.App.Planning;
using Kitwright.App.Web;
using Kitwright.Kits;
using Kitwright.Shop;
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

    // Generous, as the machine may be busy; nothing is measured by it.
    private const int Patience = 60_000;

    private IPlaywright? playwright;
    private IBrowser? browser;
    private WebApplication? app;

    public Uri Address { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        app = await Shop();
        Address = new(app.Urls.Single());
        if (Executable() is { } executable)
        {
            playwright = await Playwright.CreateAsync();
            Assertions.SetDefaultExpectTimeout(Patience);
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

    /// <summary>The demo shop's database, made once and copied for each shop.</summary>
    private static readonly Lazy<Task<byte[]>> Demo = new(async () =>
    {
        var path = Scratch.File("shop.db");
        using (var store = ShopStore.Open(path, TimeProvider.System))
        {
            await store.Demo.Seed();
        }

        return await File.ReadAllBytesAsync(path);
    });

    /// <summary>The demo shop in a database of its own, served on a free port.</summary>
    /// <param name="terms">The usual ones where null.</param>
    public static async Task<WebApplication> Shop(ShopTerms? terms = null)
    {
        var path = Scratch.File("shop.db");
        await File.WriteAllBytesAsync(path, await Demo.Value);
        var store = ShopStore.Open(path, TimeProvider.System);
        if (terms is not null)
        {
            await store.Terms.Set(terms);
        }

        var shop = WebApp.Build(new(0, await ShopWorkbench.OfStore(store, CancellationToken.None), store));
        await shop.StartAsync();
        return shop;
    }

    /// <summary>A fresh browser profile on a screen of this width, watched for what no page may do.</summary>
    /// <param name="shop">Another app than the one that all tests share; for a test that changes what is kept.</param>
    public async Task<Visit> Open(string path, int width = 1280, bool touch = false, WebApplication? shop = null)
    {
        Assert.SkipWhen(browser is null, "skipped: Chromium is absent");
        var address = shop is null ? Address : new Uri(shop.Urls.Single());
        var context = await browser.NewContextAsync(
            new()
            {
                BaseURL = address.ToString(),
                ViewportSize = new() { Width = width, Height = 900 },
                HasTouch = touch,
                ReducedMotion = ReducedMotion.Reduce,
            }
        );
        context.SetDefaultTimeout(Patience);
        var visit = new Visit(context, await context.NewPageAsync(), address);
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
