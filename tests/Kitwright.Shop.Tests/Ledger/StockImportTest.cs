using Kitwright.Measure;
using Kitwright.Shop.Ledger;
using Kitwright.Stock;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Kitwright.Shop.Tests.Ledger;

public sealed class StockImportTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public async Task What_was_imported_is_on_the_shelf()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var shelf = await shop.Store.Stock.Shelf(Cancel);
        Assert.Equal(OpenedShop.Shelf().Fabrics, shelf.Fabrics);
        Assert.Equal(OpenedShop.Shelf().Bolts, shelf.Bolts);
    }

    // More bolts than SQLite takes variables in one statement (32,766: SQLite documentation, "Implementation Limits").
    [Fact]
    public async Task A_warehouse_of_bolts_is_taken_over_in_one_booking()
    {
        var bolts = Environment.GetEnvironmentVariable("KITWRIGHT_LONG") == "1" ? 33_000 : 300;
        using var shop = new OpenedShop();
        var file = OpenedShop.Shelf() with
        {
            Bolts = [.. Enumerable.Range(0, bolts).Select(i => new Kitwright.Fabrics.Bolt($"b{i}", "F", "L1", Length.Inches(360)))],
        };

        Assert.True((await shop.Store.Stock.Import(Guid.NewGuid(), "Wren", file, dryRun: false, Cancel)).Good);

        var audit = await shop.Store.Stock.Audit(Cancel);
        Assert.True(audit.Good);
        Assert.Equal((bolts, bolts), (audit.Bolts, audit.Entries));
    }

    [Fact]
    public async Task A_dry_run_says_what_would_change_and_changes_nothing()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var file = OpenedShop.Shelf(b1: 300) with
        {
            Fabrics = [OpenedShop.Fabric("F", price: 1399), OpenedShop.Fabric("H")],
            Bolts = [new("b1", "F", "L1", Length.Inches(300)), new("b2", "F", "L2", Length.Inches(180)), new("b4", "H", "L9", Length.Inches(500))],
        };
        var import = (await shop.Store.Stock.Import(Guid.NewGuid(), "Wren", file, dryRun: true, Cancel)).Value!;
        Assert.Equal("H", Assert.Single(import.NewFabrics).Number);
        Assert.Equal(1399, Assert.Single(import.ChangedFabrics).After.PricePerYard);
        Assert.Equal("b4", Assert.Single(import.Received).Id);
        Assert.Equal(new("b1", Length.Inches(360), Length.Inches(300)), Assert.Single(import.Counted));
        Assert.Equal("b3", Assert.Single(import.NotInFile));
        Assert.Equal(OpenedShop.Shelf().Bolts, (await shop.Store.Stock.Shelf(Cancel)).Bolts);
        Assert.Equal(3, (await shop.Store.Stock.Audit(Cancel)).Entries);
    }

    [Fact]
    public async Task A_bolt_that_is_there_already_is_counted()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        await shop.Store.Stock.Import(Guid.NewGuid(), "Wren", OpenedShop.Shelf(b1: 300), dryRun: false, Cancel);
        Assert.Equal(EntryKind.Lost, (await shop.Store.Stock.Entries("b1", cancel: Cancel))[0].Kind);
        Assert.Equal(Length.Inches(300), await shop.OnHand("b1"));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public async Task The_same_import_twice_is_one_and_its_id_stands_for_no_other()
    {
        using var shop = new OpenedShop();
        var id = Guid.NewGuid();
        await shop.Store.Stock.Import(id, "Wren", OpenedShop.Shelf(), dryRun: false, Cancel);
        await shop.Book(new BookingLine("b1", EntryKind.Cut, Length.Yard));
        var again = (await shop.Store.Stock.Import(id, "Wren", OpenedShop.Shelf(), dryRun: false, Cancel)).Value!;
        Assert.True(again.Again);
        Assert.Equal(Length.Inches(324), await shop.OnHand("b1"));
        var other = await shop.Store.Stock.Import(id, "Wren", OpenedShop.Shelf(b1: 1), dryRun: false, Cancel);
        Assert.Equal("ledger.other-booking", Assert.Single(other.Findings).Rule);
    }

    [Fact]
    public async Task A_fault_in_the_middle_leaves_nothing_half_written()
    {
        using var shop = new OpenedShop();
        await using (var context = shop.Store.NewContext())
        {
            await context.Database.ExecuteSqlRawAsync(
                """CREATE TRIGGER "full" BEFORE INSERT ON "Entries" WHEN NEW."Bolt" = 'b3' BEGIN SELECT RAISE(ABORT, 'disk full'); END;""",
                Cancel
            );
        }

        await Assert.ThrowsAnyAsync<DbUpdateException>(() => shop.Store.Stock.Import(Guid.NewGuid(), "Wren", OpenedShop.Shelf(), dryRun: false, Cancel));

        var shelf = await shop.Store.Stock.Shelf(Cancel);
        Assert.Empty(shelf.Fabrics);
        Assert.Empty(shelf.Bolts);
        await using var after = shop.Store.NewContext();
        Assert.False(await after.Bookings.AnyAsync(Cancel) || await after.Entries.AnyAsync(Cancel) || await after.Balances.AnyAsync(Cancel));
    }

    [Fact]
    public async Task Names_of_columns_are_remembered_and_replaced_one_by_one()
    {
        using var shop = new OpenedShop();
        await shop.Store.Columns.Remember(new Dictionary<StockColumn, string> { [StockColumn.Fabric] = "SKU", [StockColumn.Yards] = "on hand" }, Cancel);
        await shop.Store.Columns.Remember(new Dictionary<StockColumn, string> { [StockColumn.Yards] = "left" }, Cancel);
        shop.Reopen();

        var names = await shop.Store.Columns.Read(Cancel);
        Assert.Equal(("SKU", "left", 2), (names[StockColumn.Fabric], names[StockColumn.Yards], names.Count));
    }

    [Fact]
    public async Task A_bolt_of_another_lot_under_the_same_number_keeps_the_file_out()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var file = OpenedShop.Shelf();
        file = file with { Bolts = [file.Bolts[0] with { Lot = "L7" }, new("b4", "F", "L1", Length.Yard)] };
        var import = await shop.Store.Stock.Import(Guid.NewGuid(), "Wren", file, dryRun: false, Cancel);
        Assert.Equal("ledger.bolt-differs", Assert.Single(import.Findings).Rule);
        Assert.Equal(3, (await shop.Store.Stock.Shelf(Cancel)).Bolts.Length);
    }
}
