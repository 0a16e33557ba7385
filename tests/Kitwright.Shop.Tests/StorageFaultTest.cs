using Kitwright.Measure;
using Kitwright.Shop.Ledger;
using Kitwright.Words;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Kitwright.Shop.Tests;

/// <summary>What the disk does to the shop's file is a finding, and costs nothing that was kept before.</summary>
public sealed class StorageFaultTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public async Task A_full_disk_keeps_all_of_a_change_out_and_harms_nothing()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var begun = (await shop.Store.Projects.Begin(Guid.NewGuid(), "Mine", "{}", Message.Plain("Begun"), "Wren", Cancel)).Value!;
        var large = new string('x', 1_000_000);
        await Pages(shop, 1);

        var kept = await shop.Store.Projects.Keep(begun.Project.Id, new(Guid.NewGuid(), begun.Current.Id, Message.Plain("x"), large, "Wren"), Cancel);
        var other = await shop.Store.Projects.Begin(Guid.NewGuid(), "Other", large, Message.Plain("Begun"), "Wren", Cancel);

        Assert.Equal(["storage.full", "storage.full"], [.. kept.Findings.Select(f => f.Rule), .. other.Findings.Select(f => f.Rule)]);
        Assert.Equal(begun.Current.Id, (await shop.Store.Projects.Find("mine", Cancel))!.Current.Id);
        Assert.Single(await shop.Store.Projects.All(Cancel));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);

        // Room again: the same change is kept.
        await Pages(shop, 1_000_000);
        Assert.True((await shop.Store.Projects.Begin(Guid.NewGuid(), "Other", large, Message.Plain("Begun"), "Wren", Cancel)).Good);
        await shop.Book(new BookingLine("b1", EntryKind.Cut, Length.Yard));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public async Task A_demo_shop_for_which_there_is_no_room_is_put_in_later()
    {
        using var shop = new OpenedShop();
        await Pages(shop, 1);

        var fault = await Assert.ThrowsAsync<StorageException>(() => shop.Store.Demo.Seed(Cancel));

        Assert.Equal("storage.full", fault.Finding.Rule);
        Assert.Empty(await shop.Store.Projects.All(Cancel));
        await Pages(shop, 1_000_000);
        Assert.True(await shop.Store.Demo.Seed(Cancel));
    }

    [Fact]
    public void A_file_that_is_no_database_is_not_opened_and_not_touched()
    {
        var folder = Directory.CreateTempSubdirectory("kitwright-shop-");
        var path = Path.Combine(folder.FullName, "shop.db");
        File.WriteAllText(path, "fabric,name\nF,Shell paper\n");

        var fault = Assert.Throws<StorageException>(() => ShopStore.Open(path, TimeProvider.System));

        Assert.Contains("shop.db", fault.Message, StringComparison.Ordinal);
        Assert.Equal("fabric,name\nF,Shell paper\n", File.ReadAllText(path));
        folder.Delete(recursive: true);
    }

    // Codes: SQLite documentation, "Result and Error Codes".
    [Theory]
    [InlineData(5, "storage.busy")]
    [InlineData(6, "storage.busy")]
    [InlineData(8, "storage.read-only")]
    [InlineData(10, "storage.disk")]
    [InlineData(11, "storage.damaged")]
    [InlineData(13, "storage.full")]
    [InlineData(14, "storage.read-only")]
    [InlineData(26, "storage.damaged")]
    [InlineData(1, null)]
    [InlineData(19, null)]
    public void A_code_of_sqlite_is_told_and_a_fault_of_ours_is_not_hidden(int code, string? rule)
    {
        var fault = new SqliteException("", code);

        Assert.Equal(rule, StorageFault.Of(fault, "shop.db")?.Rule);
        Assert.Equal(rule, StorageFault.Of(new DbUpdateException("", fault), "shop.db")?.Rule);
    }

    // The limit is the connection's own and stays on it in the pool; pages beyond what the file has are refused.
    private static async Task Pages(OpenedShop shop, int most)
    {
        await using var context = shop.Store.NewContext();
        await context.Database.OpenConnectionAsync(Cancel);
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA max_page_count = {most}";
        await command.ExecuteNonQueryAsync(Cancel);
    }
}
