using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using Kitwright.App.Tests.Browser;
using Microsoft.Playwright;

namespace Kitwright.App.Tests.Shop;

/// <summary>The whole way of what is left: cut, put on the shelf, planned from, used, gone.</summary>
public sealed class LeftoversTest(Chromium chromium)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_left_of_a_quilt_goes_on_the_shelf_and_the_next_plan_takes_it_off()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/quilts/ostrel-bay-stars/cut", shop: shop);
        using var client = new HttpClient { BaseAddress = new(shop.Urls.Single()) };
        var page = visit.Page;
        Assert.Empty(await Shelf(client));

        var shelving = page.Locator("#shelving");
        await shelving.GetByRole(AriaRole.Checkbox, new() { Name = "A, " }).UncheckAsync();
        await shelving.GetByLabel("How many quilts were cut").FillAsync("2");
        await shelving.GetByRole(AriaRole.Button, new() { Name = "Put these on the shelf" }).ClickAsync();
        await Assertions.Expect(shelving.Locator(".booked")).ToContainTextAsync("put on the shelf from this plan");
        var shelved = await Shelf(client);
        Assert.NotEmpty(shelved);
        Assert.All(shelved, line => Assert.EndsWith("quilts/ostrel-bay-stars/plan/" + line.From.Split('/')[^1], line.From, StringComparison.Ordinal));
        Assert.All(shelved, line => Assert.Equal(0, line.Count % 2));

        await visit.Go("/quilts/ostrel-bay-stars/stash?shelf=yes");
        await Assertions.Expect(page.Locator(".rest")).ToContainTextAsync("yd");
        var use = page.GetByRole(AriaRole.Button, new() { Name = "off the shelf" });
        var taken = int.Parse(new string([.. (await use.InnerTextAsync()).Where(char.IsAsciiDigit)]), CultureInfo.InvariantCulture);
        await use.ClickAsync();
        await Assertions.Expect(page.Locator(".booked")).ToContainTextAsync($"{taken} pieces taken off the shelf");
        // Booked once: there is nothing to press a second time.
        await Assertions.Expect(use).ToHaveCountAsync(0);
        var after = await Shelf(client);
        Assert.Equal(Area(shelved) > Area(after), taken > 0);

        await page.Locator(".booked").GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        await Assertions.Expect(page.Locator(".booked")).ToContainTextAsync("and put back");
        Assert.Equal(shelved, await Shelf(client));

        await visit.Go("/shop/stock");
        await Assertions.Expect(page.Locator("#leftovers")).ToContainTextAsync("Harbor night");
        var rows = await page.Locator("#leftovers td.number").AllInnerTextsAsync();
        Assert.Equal(shelved.Sum(line => line.Count), rows.Sum(text => int.Parse(text, CultureInfo.InvariantCulture)));
        await page.Locator("#leftovers").GetByRole(AriaRole.Button, new() { NameRegex = new(": thrown away") }).First.ClickAsync();
        await Assertions.Expect(page.Locator("#leftovers .booked")).ToContainTextAsync("thrown away");
        Assert.Equal(shelved.Sum(line => line.Count) - 1, (await Shelf(client)).Sum(line => line.Count));
    }

    [Fact]
    public async Task What_a_plan_took_is_gone_from_the_stock_page_and_cloth_is_put_there_by_hand()
    {
        await using var shop = await Chromium.Shop();
        await using var visit = await chromium.Open("/shop/stock", shop: shop);
        using var client = new HttpClient { BaseAddress = new(shop.Urls.Single()) };
        var page = visit.Page;
        var leftovers = page.Locator("#leftovers");

        async Task Add(string width, string height, string count)
        {
            await leftovers.GetByRole(AriaRole.Combobox).SelectOptionAsync("OB-201");
            await leftovers.GetByLabel("Across the fabric").FillAsync(width);
            await leftovers.GetByLabel("Along the fabric").FillAsync(height);
            await leftovers.GetByLabel("How many pieces", new() { Exact = true }).FillAsync(count);
            await leftovers.GetByRole(AriaRole.Button, new() { Name = "Put it on the shelf" }).ClickAsync();
        }

        foreach (var (width, height, count, said) in new[] { ("wide", "8", "1", "No size can be read"), ("90", "8", "1", "cannot be left of it"), ("-1", "8", "1", "A piece of 8"), ("40", "8", "0", "0 pieces cannot be booked") })
        {
            await Add(width, height, count);
            await Assertions.Expect(leftovers.GetByRole(AriaRole.Alert)).ToContainTextAsync(said);
            Assert.Empty(await Shelf(client));
        }

        await Add("40", "7 7/8", "3");
        await Assertions.Expect(leftovers.Locator(".booked")).ToContainTextAsync("3 pieces of");
        Assert.Equal(3, Assert.Single(await Shelf(client)).Count);
        await leftovers.GetByRole(AriaRole.Spinbutton, new() { NameRegex = new("^How many pieces of") }).FillAsync("2");
        await leftovers.GetByRole(AriaRole.Button, new() { NameRegex = new("^2 pieces.*: used") }).ClickAsync();
        await Assertions.Expect(leftovers.Locator("td.number")).ToHaveTextAsync("1");

        await visit.Go("/quilts/ostrel-bay-stars/stash?shelf=yes");
        await page.GetByRole(AriaRole.Button, new() { Name = "off the shelf" }).ClickAsync();
        await Assertions.Expect(page.Locator(".booked")).ToContainTextAsync("1 piece taken off the shelf");
        await visit.Go("/shop/stock");
        await Assertions.Expect(leftovers.GetByText("7 7/8 × 40 in")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Other_programs_book_a_list_once_and_get_a_conflict_for_what_is_not_there()
    {
        await using var shop = await Chromium.Shop();
        using var client = new HttpClient { BaseAddress = new(shop.Urls.Single()) };
        var (id, list) = (Guid.NewGuid(), "fabric,width,height,count,from\r\nOB-201,40,7 7/8,2,basket\r\n");

        Assert.Equal(HttpStatusCode.OK, (await Put(client, $"/api/stock/leftovers/{id}", list)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Put(client, $"/api/stock/leftovers/{id}", list)).StatusCode);
        Assert.Equal(list, await client.GetStringAsync("/api/stock/leftovers.csv", Cancel));
        Assert.Equal(HttpStatusCode.Conflict, (await Put(client, $"/api/stock/leftovers/{id}?as=used", list)).StatusCode);
        Assert.Equal(HttpStatusCode.Conflict, (await Put(client, $"/api/stock/leftovers/{Guid.NewGuid()}?as=used", list.Replace(",2,", ",3,", StringComparison.Ordinal))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Put(client, $"/api/stock/leftovers/{Guid.NewGuid()}?as=eaten", list)).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Put(client, $"/api/stock/leftovers/{Guid.NewGuid()}", "fabric,width\n1,2\n")).StatusCode);

        var quilt = await client.GetStringAsync("/api/quilts/ostrel-bay-stars", Cancel);
        using var body = new StringContent(quilt, Encoding.UTF8, "application/json");
        using var answer = JsonDocument.Parse(await (await client.PostAsync("/api/stash?shelf=true&colorway=Harbor%20lights", body, Cancel)).Content.ReadAsStringAsync(Cancel));
        var shelf = answer.RootElement.GetProperty("shelf");
        Assert.Equal("OB-201", Assert.Single(shelf.GetProperty("used").EnumerateArray().ToList()).GetProperty("fabric").GetString());
        Assert.Contains(shelf.GetProperty("buy").EnumerateArray(), buy => buy.GetProperty("there").GetInt64() > 0);

        Assert.Equal(HttpStatusCode.OK, (await Put(client, $"/api/stock/leftovers/{id}/back", "")).StatusCode);
        Assert.Empty(await Shelf(client));
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync($"/api/stock/leftovers/{id}", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync($"/api/stock/leftovers/{Guid.NewGuid()}", Cancel)).StatusCode);
    }

    private static async Task<HttpResponseMessage> Put(HttpClient client, string path, string list)
    {
        using var body = new StringContent(list, Encoding.UTF8, "text/csv");
        return await client.PutAsync(path, body, Cancel);
    }

    private static async Task<List<(string Fabric, string Width, string Height, int Count, string From)>> Shelf(HttpClient client) =>
        [
            .. (await client.GetStringAsync("/api/stock/leftovers.csv", Cancel))
                .Split("\r\n", StringSplitOptions.RemoveEmptyEntries)
                .Skip(1)
                .Select(line => line.Split(','))
                .Select(cells => (cells[0], cells[1], cells[2], int.Parse(cells[3], CultureInfo.InvariantCulture), cells[4])),
        ];

    private static Measure.Rational Area(IEnumerable<(string Fabric, string Width, string Height, int Count, string From)> lines) =>
        lines.Aggregate(
            Measure.Rational.Zero,
            (sum, line) =>
            {
                Assert.True(Measure.LengthText.TryParse(line.Width, out var width) & Measure.LengthText.TryParse(line.Height, out var height));
                return sum + (width.InInches * height.InInches * line.Count);
            }
        );
}
