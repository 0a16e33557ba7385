using CsCheck;
using Kitwright.Measure;
using Kitwright.Shop.Ledger;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Kitwright.Shop.Tests.Ledger;

public sealed class StockLedgerTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    // More than SQLite takes variables in one statement (32,766: SQLite documentation, "Implementation Limits").
    [Fact]
    public async Task A_booking_of_very_many_bolts_is_looked_up_at_once()
    {
        using var shop = new OpenedShop();

        var booked = await shop.Store.Stock.Book(new(Guid.NewGuid(), "Wren", [.. Enumerable.Range(0, 33_000).Select(i => new BookingLine($"x{i}", EntryKind.Cut, Length.Inch))]), Cancel);

        Assert.Equal(33_000, booked.Findings.Count(f => f.Rule == "ledger.unknown-bolt"));
    }

    [Fact]
    public async Task A_cut_shortens_the_bolt_and_stands_in_the_ledger()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        await shop.Book(new("b1", EntryKind.Squared, Length.Inch), new("b1", EntryKind.Cut, Length.Inches(112, 1, 2), "kit/dawn/3/need/1"));
        Assert.Equal(Length.Inches(246, 1, 2), await shop.OnHand("b1"));
        var entries = await shop.Store.Stock.Entries("b1", cancel: Cancel);
        Assert.Equal([EntryKind.Cut, EntryKind.Squared, EntryKind.Received], entries.Select(e => e.Kind));
        Assert.Equal((-Length.Inches(112, 1, 2), "kit/dawn/3/need/1", "Wren", shop.Clock.Now), (entries[0].Change, entries[0].For, entries[0].By, entries[0].At));
    }

    [Fact]
    public async Task A_cut_that_was_made_is_never_refused()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var booked = await shop.Book(new BookingLine("b3", EntryKind.Cut, Length.Inches(95)));
        Assert.Equal([EntryKind.Found, EntryKind.Cut], booked.Entries.Select(e => e.Kind));
        Assert.Equal(Length.Inches(5), booked.Entries[0].Change);
        Assert.Equal(Length.Zero, await shop.OnHand("b3"));
    }

    [Theory]
    [InlineData(95, EntryKind.Found, 5)]
    [InlineData(80, EntryKind.Lost, -10)]
    public async Task A_count_books_the_difference(int measured, EntryKind kind, int change)
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var entry = Assert.Single((await shop.Book(new BookingLine("b3", EntryKind.Counted, Length.Inches(measured)))).Entries);
        Assert.Equal((kind, Length.Inches(change)), (entry.Kind, entry.Change));
        Assert.Equal(Length.Inches(measured), await shop.OnHand("b3"));
        Assert.Empty((await shop.Book(new BookingLine("b3", EntryKind.Counted, Length.Inches(measured)))).Entries);
    }

    [Fact]
    public async Task An_act_that_is_sent_twice_is_booked_once()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var booking = new Booking(Guid.NewGuid(), "Wren", [new("b1", EntryKind.Cut, Length.Yard)]);
        var first = (await shop.Store.Stock.Book(booking, Cancel)).Value!;
        shop.Reopen();
        var second = (await shop.Store.Stock.Book(booking, Cancel)).Value!;
        Assert.False(first.Again);
        Assert.True(second.Again);
        Assert.Equal(first.Entries, second.Entries);
        Assert.Equal(first.Entries, (await shop.Store.Stock.Find(booking.Id, Cancel))!.Entries);
        Assert.Equal(Length.Inches(324), await shop.OnHand("b1"));
        Assert.Null(await shop.Store.Stock.Find(Guid.NewGuid(), Cancel));
    }

    [Fact]
    public async Task An_id_is_never_taken_for_another_act()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var booking = new Booking(Guid.NewGuid(), "Wren", [new("b1", EntryKind.Cut, Length.Yard)]);
        await shop.Store.Stock.Book(booking, Cancel);
        var other = await shop.Store.Stock.Book(booking with { Lines = [new("b2", EntryKind.Cut, Length.Yard)] }, Cancel);
        Assert.Equal("ledger.other-booking", Assert.Single(other.Findings).Rule);
        Assert.Equal(Length.Inches(180), await shop.OnHand("b2"));
    }

    public static TheoryData<string, EntryKind, string, string> Refused() =>
        new()
        {
            { "b9", EntryKind.Cut, "36", "ledger.unknown-bolt" },
            { "b1", EntryKind.Cut, "0", "ledger.length" },
            { "b1", EntryKind.Cut, "-36", "ledger.length" },
            { "b1", EntryKind.Counted, "-1", "ledger.length" },
            { "b1", EntryKind.Cut, "999999999", "ledger.length" },
            { "b1", EntryKind.Cut, "1/7", "ledger.length" },
            { "b3", EntryKind.Lost, "91", "ledger.more-lost" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task A_line_at_fault_keeps_the_whole_act_from_being_booked(string bolt, EntryKind kind, string inches, string rule)
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        Assert.True(LengthText.TryParse(inches, out var length));
        var booking = new Booking(Guid.NewGuid(), "Wren", [new("b1", EntryKind.Cut, Length.Yard), new(bolt, kind, length)]);
        Assert.Equal(rule, Assert.Single((await shop.Store.Stock.Book(booking, Cancel)).Findings).Rule);
        Assert.Equal(Length.Inches(360), await shop.OnHand("b1"));
        Assert.Null(await shop.Store.Stock.Find(booking.Id, Cancel));
    }

    [Fact]
    public async Task The_order_of_entries_does_not_hang_on_the_clock()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        shop.Clock.Now = shop.Clock.Now.AddDays(-400);
        await shop.Book(new BookingLine("b1", EntryKind.Sold, Length.Yard));
        Assert.Equal(EntryKind.Sold, (await shop.Store.Stock.Entries("b1", cancel: Cancel))[0].Kind);
    }

    [Fact]
    public async Task Whatever_is_booked_a_balance_is_the_sum_of_its_entries_and_never_below_zero()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        var acts = Gen.Select(Gen.Int[1, 3], Gen.Enum<EntryKind>(), Gen.Int[0, 1_600]).Array[1, 4].Array[60].Single();
        foreach (var act in acts)
        {
            await shop.Store.Stock.Book(
                new(Guid.NewGuid(), "Wren", [.. act.Select(a => new BookingLine($"b{a.Item1}", a.Item2, Length.Inches(new Rational(a.Item3, 8))))]),
                Cancel
            );
        }

        var audit = await shop.Store.Stock.Audit(Cancel);
        Assert.True(audit.Good);
        Assert.True(audit.Entries > 20);
        Assert.All((await shop.Store.Stock.Shelf(Cancel)).Bolts, b => Assert.True(b.OnHand.Sign >= 0));
    }

    [Fact]
    public async Task An_audit_finds_a_balance_that_was_tampered_with()
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        Execute(shop, "UPDATE Balances SET OnHandTicks = OnHandTicks + 8128 WHERE Bolt = 'b2'");
        var difference = Assert.Single((await shop.Store.Stock.Audit(Cancel)).Differences);
        Assert.Equal(("b2", Length.Inches(180), Length.Inches(181)), (difference.Bolt, difference.Sum, difference.Balance));
    }

    [Theory]
    [InlineData("UPDATE Entries SET Ticks = 1")]
    [InlineData("DELETE FROM Entries")]
    [InlineData("UPDATE Bookings SET By = 'x'")]
    [InlineData("DELETE FROM Bookings WHERE Id NOT IN (SELECT Booking FROM Entries)")]
    [InlineData("UPDATE Balances SET OnHandTicks = -1")]
    public async Task The_database_itself_keeps_the_ledger_as_it_was_written(string sql)
    {
        using var shop = new OpenedShop();
        await shop.Stock();
        await shop.Store.Stock.Book(new(Guid.NewGuid(), "Wren", [new("b1", EntryKind.Counted, Length.Inches(360))]), Cancel);
        Assert.Throws<SqliteException>(() => Execute(shop, sql));
    }

    private static void Execute(OpenedShop shop, string sql)
    {
        using var context = shop.Store.NewContext();
        context.Database.ExecuteSqlRaw(sql);
    }
}
