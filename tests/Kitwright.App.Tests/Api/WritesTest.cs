using System.Net;
using System.Text.Json.Nodes;
using Kitwright.App.Tests.Browser;
using Kitwright.App.Tests.Commands;

namespace Kitwright.App.Tests.Api;

/// <summary>Writes: done once for each id, seen by the pages, and all or nothing.</summary>
public sealed class WritesTest
{
    private const string Table = "fabric,lot,bolt,width,yards,price,color\nF-1,L1,X1,44,11 1/2,12.90,#3a5f8c\n";

    private static ApiClient Client(Microsoft.AspNetCore.Builder.WebApplication shop) => new(new Uri(shop.Urls.Single()));

    [Fact]
    public async Task Stock_is_taken_over_once_however_often_it_is_sent()
    {
        await using var shop = await Chromium.Shop();
        using var api = Client(shop);
        var path = $"/api/stock/{Guid.NewGuid()}";

        var dry = await api.Put($"{path}?dry-run=true", Table, "text/csv");
        Assert.Equal((1, true), (dry.Json.GetProperty("import").GetProperty("received").GetArrayLength(), dry.Json.GetProperty("import").GetProperty("dryRun").GetBoolean()));
        Assert.Equal(HttpStatusCode.NotFound, (await api.Get(path)).Status);

        Assert.False((await api.Put(path, Table, "text/csv")).Json.GetProperty("import").GetProperty("again").GetBoolean());
        Assert.True((await api.Put(path, Table, "text/csv")).Json.GetProperty("import").GetProperty("again").GetBoolean());
        Assert.Equal(1, (await api.Get(path)).Json.GetProperty("entries").GetArrayLength());
        var bolts = (await api.Get("/api/stock")).Json.GetProperty("bolts").EnumerateArray();
        Assert.Equal("414", bolts.Single(b => b.GetProperty("id").GetString() == "X1").GetProperty("onHand").GetString());
    }

    [Fact]
    public async Task An_id_is_never_taken_for_another_act()
    {
        await using var shop = await Chromium.Shop();
        using var api = Client(shop);
        var path = $"/api/stock/{Guid.NewGuid()}";
        await api.Put(path, Table, "text/csv");

        Assert.Equal(["ledger.other-booking"], (await api.Put(path, Table.Replace("11 1/2", "9", StringComparison.Ordinal), "text/csv")).Problem(409));
    }

    [Fact]
    public async Task A_faulty_file_is_a_problem_and_columns_can_be_named()
    {
        await using var shop = await Chromium.Shop();
        using var api = Client(shop);
        var odd = Table.Replace("fabric,", "SKU,", StringComparison.Ordinal);

        var refused = await api.Put($"/api/stock/{Guid.NewGuid()}", odd, "text/csv");
        Assert.Equal(["stock.column-missing"], refused.Problem(422));
        Assert.Equal("line 1", refused.Json.GetProperty("findings")[0].GetProperty("place").GetString());
        Assert.Equal(HttpStatusCode.OK, (await api.Put($"/api/stock/{Guid.NewGuid()}?column=fabric%3DSKU", odd, "text/csv")).Status);
        // The name is remembered.
        Assert.Equal(HttpStatusCode.OK, (await api.Put($"/api/stock/{Guid.NewGuid()}", odd.Replace("12.90", "13.50", StringComparison.Ordinal), "text/csv")).Status);
    }

    [Fact]
    public async Task A_quilt_is_begun_changed_and_kept_as_revisions_each_once()
    {
        await using var shop = await Chromium.Shop();
        using var api = Client(shop);
        var quilt = JsonNode.Parse(await File.ReadAllTextAsync(Run.Stars, TestContext.Current.CancellationToken))!;
        quilt["name"] = "A Quilt of the Shop's Own";
        var first = Guid.NewGuid();

        var begun = await api.Put($"/api/quilts/new/{first}", quilt.ToJsonString());
        Assert.Equal("a-quilt-of-the-shop-s-own", begun.Json.GetProperty("slug").GetString());
        Assert.Equal(begun.Body, (await api.Put($"/api/quilts/new/{first}", quilt.ToJsonString())).Body);
        var read = await api.Get("/api/quilts/a-quilt-of-the-shop-s-own");
        Assert.Equal(first.ToString(), read.Tag);

        quilt["setting"]!["columns"] = 4;
        var second = $"/api/quilts/a-quilt-of-the-shop-s-own/revisions/{Guid.NewGuid()}?base={first}";
        var kept = await api.Put(second, quilt.ToJsonString());
        Assert.Equal((2, false), (kept.Json.GetProperty("number").GetInt32(), kept.Json.GetProperty("beside").GetBoolean()));
        Assert.Equal(kept.Body, (await api.Put(second, quilt.ToJsonString())).Body);
        Assert.Equal(4, (await api.Get("/api/quilts/a-quilt-of-the-shop-s-own")).Json.GetProperty("setting").GetProperty("columns").GetInt32());

        // Somebody else on the first revision: kept beside, and nothing is lost.
        quilt["setting"]!["columns"] = 3;
        var other = await api.Put($"/api/quilts/a-quilt-of-the-shop-s-own/revisions/{Guid.NewGuid()}?base={first}", quilt.ToJsonString());
        Assert.True(other.Json.GetProperty("beside").GetBoolean());
        Assert.Equal(4, (await api.Get("/api/quilts/a-quilt-of-the-shop-s-own/plan")).Json.GetProperty("plan").GetProperty("design").GetProperty("placements").GetArrayLength() / 6);
    }

    [Fact]
    public async Task An_edit_on_no_revision_is_a_conflict()
    {
        await using var shop = await Chromium.Shop();
        using var api = Client(shop);
        var quilt = await File.ReadAllTextAsync(Run.Stars, TestContext.Current.CancellationToken);

        Assert.Equal(["revision.no-base"], (await api.Put($"/api/quilts/ostrel-bay-stars/revisions/{Guid.NewGuid()}?base={Guid.NewGuid()}", quilt)).Problem(409));
    }
}
