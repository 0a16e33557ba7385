using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>
/// One visitor's page. When it ends, it has sent nothing beyond loopback, broken no content security policy and thrown
/// no script error.
/// </summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> faults = [];

    public Visit(IBrowserContext context, IPage page, Uri address)
    {
        this.context = context;
        Page = page;
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address.ToString(), StringComparison.Ordinal))
            {
                faults.Add($"left loopback: {request.Url}");
            }
        };
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
            {
                faults.Add($"console: {message.Text}");
            }
        };
        page.PageError += (_, error) => faults.Add($"script: {error}");
    }

    public IPage Page { get; }

    /// <summary>Loads a page and waits until it answers to the hand.</summary>
    public async Task Go(string path)
    {
        await Page.GotoAsync(path);
        await Page.Locator(".sheet[data-live=yes]").WaitForAsync();
    }

    /// <summary>Waits until the address has the text in it.</summary>
    public Task AddressHas(string text) =>
        Page.WaitForFunctionAsync("text => decodeURIComponent(location.href).includes(text)", text);

    /// <summary>Waits until the address no longer has the text in it.</summary>
    public Task AddressLacks(string text) =>
        Page.WaitForFunctionAsync("text => !decodeURIComponent(location.href).includes(text)", text);

    /// <summary>Presses a key and waits for the address that it leads to.</summary>
    public async Task Press(string key, string address)
    {
        await Page.Keyboard.PressAsync(key);
        await AddressHas(address);
    }

    /// <summary>Gives a file to the page's file field, once the field listens: what comes before is lost on it.</summary>
    public async Task Upload(string name, string text, string type = "text/csv")
    {
        await Page.WaitForFunctionAsync(
            "() => document.querySelector('input[type=file]')?._blazorInputFileNextFileId !== undefined");
        await Page.Locator("input[type=file]")
            .SetInputFilesAsync(new FilePayload { Name = name, MimeType = type, Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
    }

    /// <summary>Presses Tab until an element of the kind has the focus.</summary>
    public async Task Tab(string until)
    {
        for (var i = 0; i < 100; i++)
        {
            await Page.Keyboard.PressAsync("Tab");
            if (await Page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", until))
            {
                return;
            }
        }

        Assert.Fail($"Tab never comes to {until}.");
    }

    /// <summary>Where a point of the quilt lies on the screen.</summary>
    /// <param name="x">Inches from the left edge of the quilt.</param>
    /// <param name="y">Inches from its upper edge.</param>
    public async Task<(float X, float Y)> OnQuilt(double x, double y)
    {
        var svg = Page.Locator(".picking svg").First;
        await svg.ScrollIntoViewIfNeededAsync();
        var box = (await svg.BoundingBoxAsync())!;
        var inches = await svg.EvaluateAsync<double>("svg => svg.viewBox.baseVal.width");
        return ((float)(box.X + (x / inches * box.Width)), (float)(box.Y + (y / inches * box.Width)));
    }

    public async ValueTask DisposeAsync()
    {
        await context.CloseAsync();
        Assert.Empty(faults);
    }
}
