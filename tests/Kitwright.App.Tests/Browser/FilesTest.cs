using System.Text.Json.Nodes;
using Kitwright.Quilts;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Browser;

/// <summary>Files in and out, copies, and the way back to any version.</summary>
public sealed class FilesTest(Chromium chromium)
{
    private const string Stars = "/quilts/ostrel-bay-stars";

    private static ILocator Button(Visit visit, string name) => visit.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    [Fact]
    public async Task A_quilt_goes_out_as_file_and_picture()
    {
        await using var visit = await chromium.Open($"{Stars}/files");
        var json = await visit.Page.APIRequest.GetAsync($"{Stars}/quilt.json");
        Assert.True(QuiltFile.Read(await json.TextAsync()).Good);
        var png = await visit.Page.APIRequest.GetAsync($"{Stars}/picture.png?width=320");
        Assert.Equal("89504E47", Convert.ToHexString((await png.BodyAsync())[..4]));
        var svg = await visit.Page.APIRequest.GetAsync($"{Stars}/picture.svg");
        Assert.StartsWith("<svg", await svg.TextAsync(), StringComparison.Ordinal);
        Assert.Equal(422, (await visit.Page.APIRequest.GetAsync($"{Stars}/picture.png?width=3")).Status);
        Assert.Equal(404, (await visit.Page.APIRequest.GetAsync($"{Stars}/picture.png?colorway=none")).Status);
    }

    [Fact]
    public async Task A_copy_is_changed_and_brought_back_to_its_first_version()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open($"{Stars}/files", shop: shop))
        {
            await Button(visit, "Make a copy to change").ClickAsync();
            await visit.Page.WaitForURLAsync("**/quilts/ostrel-bay-stars-copy");
            await visit.Go("/quilts/ostrel-bay-stars-copy?try=columns:4");
            await Button(visit, "Keep it").ClickAsync();
            await visit.AddressLacks("try");

            await visit.Go("/quilts/ostrel-bay-stars-copy/files");
            await Button(visit, "Show version 1 again").ClickAsync();
            await Assertions.Expect(visit.Page.GetByText("Version 3.")).ToBeVisibleAsync();
            await visit.Go("/quilts/ostrel-bay-stars-copy");
            await Assertions.Expect(visit.Page.GetByLabel("Blocks across")).ToHaveValueAsync("5");
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task A_file_is_opened_or_says_what_is_wrong_with_it()
    {
        await using var shop = await Chromium.Shop();
        await using (var visit = await chromium.Open("/open", shop: shop))
        {
            var file = JsonNode.Parse(await File.ReadAllTextAsync(Commands.Run.Stars, TestContext.Current.CancellationToken))!;
            file["name"] = "Brought Along";
            await visit.Page.Locator("summary").ClickAsync();
            await visit.Page.Locator("textarea").FillAsync("{");
            await Button(visit, "Open it").ClickAsync();
            await Assertions.Expect(visit.Page.GetByText("this is not JSON")).ToBeVisibleAsync();
            await visit.Page.Locator("textarea").FillAsync(file.ToJsonString());
            await Button(visit, "Open it").ClickAsync();
            await visit.Page.WaitForURLAsync("**/quilts/brought-along");
        }

        await shop.StopAsync(TestContext.Current.CancellationToken);
    }
}
