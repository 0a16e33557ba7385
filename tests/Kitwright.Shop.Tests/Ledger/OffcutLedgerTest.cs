using System.Collections.Immutable;
using CsCheck;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Shop.Ledger;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Kitwright.Shop.Tests.Ledger;

public sealed class OffcutLedgerTest
{
    private const string Plan = "quilts/dawn/plan/7F3K";

    private static CancellationToken Cancel => OpenedShop.Cancel;

    [Fact]
    public async Task Leftovers_are_shelved_used_and_thrown_away_and_never_fewer_than_none()
    {
        using var shop = await Shop();
        Assert.Empty((await Book(shop, Line(OffcutKind.Shelved, 3), Line(OffcutKind.Shelved, 2, width: 10))).Findings);
        Assert.Empty((await Book(shop, Line(OffcutKind.Used, 2))).Findings);

        var there = await shop.Store.Offcuts.All(Cancel);
        Assert.Equal([(10, 2), (5, 1)], there.Select(o => ((int)o.Width.InInches.Floor(), o.Count)));
        Assert.All(there, o => Assert.Equal(Plan, o.From));
        Assert.Equal(there, (await shop.Store.Stock.Shelf(Cancel)).Offcuts);

        var refused = await Book(shop, Line(OffcutKind.ThrownAway, 1, width: 10), Line(OffcutKind.Used, 2));
        Assert.Equal("leftovers.gone", Assert.Single(refused.Findings).Rule);
        Assert.Equal(there, await shop.Store.Offcuts.All(Cancel));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public async Task An_act_that_is_sent_twice_is_booked_once_and_its_id_is_taken_for_no_other()
    {
        using var shop = await Shop();
        var booking = new OffcutBooking(Guid.NewGuid(), "Wren", [Line(OffcutKind.Shelved, 3)]);
        var first = (await shop.Store.Offcuts.Book(booking, Cancel)).Value!;
        shop.Reopen();
        var second = (await shop.Store.Offcuts.Book(booking, Cancel)).Value!;
        Assert.Equal((false, true), (first.Again, second.Again));
        Assert.Equal(first.Entries, second.Entries);
        Assert.Equal(first.Entries, (await shop.Store.Offcuts.Find(booking.Id, Cancel))!.Entries);
        Assert.Equal(3, Assert.Single(await shop.Store.Offcuts.All(Cancel)).Count);

        Assert.Equal("ledger.other-booking", Assert.Single((await shop.Store.Offcuts.Book(booking with { By = "Robin" }, Cancel)).Findings).Rule);
        Assert.Equal("ledger.other-booking", Assert.Single((await shop.Store.Stock.Book(new(booking.Id, "Wren", [new("b1", EntryKind.Cut, Length.Yard)]), Cancel)).Findings).Rule);
    }

    [Fact]
    public async Task What_was_booked_is_taken_back_once()
    {
        using var shop = await Shop();
        var shelved = (await Book(shop, Line(OffcutKind.Shelved, 3))).Value!;
        var used = (await Book(shop, Line(OffcutKind.Used, 2))).Value!;

        Assert.Equal("leftovers.gone", Assert.Single((await shop.Store.Offcuts.TakeBack(shelved.Id, "Wren", Cancel)).Findings).Rule);
        Assert.Equal(OffcutKind.PutBack, Assert.Single((await shop.Store.Offcuts.TakeBack(used.Id, "Wren", Cancel)).Value!.Entries).Kind);
        Assert.True((await shop.Store.Offcuts.TakeBack(used.Id, "Robin", Cancel)).Value!.Again);
        Assert.Equal(3, Assert.Single(await shop.Store.Offcuts.All(Cancel)).Count);
        Assert.Empty((await shop.Store.Offcuts.TakeBack(shelved.Id, "Wren", Cancel)).Findings);
        Assert.Empty(await shop.Store.Offcuts.All(Cancel));
        Assert.Equal("leftovers.no-booking", Assert.Single((await shop.Store.Offcuts.TakeBack(Guid.NewGuid(), "Wren", Cancel)).Findings).Rule);
        Assert.Equal(4, (await shop.Store.Offcuts.Entries(Plan, cancel: Cancel)).Length);
        Assert.Empty(await shop.Store.Offcuts.Entries("another", cancel: Cancel));
    }

    [Fact]
    public async Task What_came_and_went_in_one_act_is_taken_back_with_it()
    {
        using var shop = await Shop();
        var act = (await Book(shop, Line(OffcutKind.Shelved, 3), Line(OffcutKind.Used, 3))).Value!;
        Assert.Empty((await shop.Store.Offcuts.TakeBack(act.Id, "Wren", Cancel)).Findings);
        Assert.Empty(await shop.Store.Offcuts.All(Cancel));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Theory]
    [InlineData(5, OffcutKind.Found, 2)]
    [InlineData(0, OffcutKind.Lost, -3)]
    public async Task A_count_books_the_difference(int counted, OffcutKind kind, int change)
    {
        using var shop = await Shop();
        await Book(shop, Line(OffcutKind.Shelved, 3));
        var entry = Assert.Single((await Book(shop, Line(OffcutKind.Counted, counted))).Value!.Entries);
        Assert.Equal((kind, change), (entry.Kind, entry.Change));
        Assert.Empty((await Book(shop, Line(OffcutKind.Counted, counted))).Value!.Entries);
    }

    public static TheoryData<string, string, int, string> Refused() =>
        new()
        {
            { "Z", "5", 1, "leftovers.unknown-fabric" },
            { "F", "0", 1, "leftovers.size" },
            { "F", "-5", 1, "leftovers.size" },
            { "F", "1/7", 1, "leftovers.size" },
            { "F", "99999999", 1, "leftovers.size" },
            { "F", "200", 1, "leftovers.wider" },
            { "F", "6", 1_000_000, "leftovers.count" },
            { "F", "5", 0, "leftovers.count" },
            { "F", "5", -1, "leftovers.count" },
            { "F", "5", int.MaxValue, "leftovers.count" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task A_line_at_fault_keeps_the_whole_act_from_being_booked(string fabric, string width, int count, string rule)
    {
        using var shop = await Shop();
        Assert.True(LengthText.TryParse(width, out var length));
        var refused = await Book(shop, Line(OffcutKind.Shelved, 1), new OffcutLine(fabric, length, Length.Inches(8), OffcutKind.Shelved, count));
        Assert.Equal(rule, Assert.Single(refused.Findings).Rule);
        Assert.Empty(await shop.Store.Offcuts.All(Cancel));
        Assert.Equal("leftovers.nothing", Assert.Single((await Book(shop)).Findings).Rule);
    }

    // Two stations on one file: writers take their turn, and what the first took is not there for the second.
    [Fact]
    public async Task Two_stations_that_race_for_the_last_piece_do_not_both_get_it()
    {
        using var shop = await Shop();
        await Book(shop, Line(OffcutKind.Shelved, 4));
        using var other = ShopStore.Open(shop.Path, TimeProvider.System);

        var outcomes = await Task.WhenAll(
            Enumerable.Range(0, 8).Select(i => Task.Run(() => (i % 2 == 0 ? shop.Store : other).Offcuts.Book(new(Guid.NewGuid(), "Wren", [Line(OffcutKind.Used, 1)]), Cancel), Cancel))
        );

        Assert.Equal(4, outcomes.Count(o => o.Good));
        Assert.All(outcomes.Where(o => !o.Good), o => Assert.Equal("leftovers.gone", Assert.Single(o.Findings).Rule));
        Assert.Empty(await shop.Store.Offcuts.All(Cancel));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    // What a station had not finished when it was cut off is not there; what it had is.
    [Fact]
    public async Task A_booking_that_was_cut_off_in_between_leaves_nothing_and_can_be_sent_again()
    {
        using var shop = await Shop();
        await Book(shop, Line(OffcutKind.Shelved, 3));
        Execute(shop, "CREATE TRIGGER cut_off BEFORE INSERT ON OffcutEntries WHEN NEW.Change = -2 BEGIN SELECT RAISE(ABORT, 'cut off'); END;");
        var booking = new OffcutBooking(Guid.NewGuid(), "Wren", [Line(OffcutKind.Used, 1), Line(OffcutKind.Used, 2)]);
        await Assert.ThrowsAnyAsync<Exception>(() => shop.Store.Offcuts.Book(booking, Cancel));

        shop.Reopen();
        Assert.Equal(3, Assert.Single(await shop.Store.Offcuts.All(Cancel)).Count);
        Assert.Null(await shop.Store.Offcuts.Find(booking.Id, Cancel));
        Execute(shop, "DROP TRIGGER cut_off");
        Assert.False((await shop.Store.Offcuts.Book(booking, Cancel)).Value!.Again);
        Assert.Empty(await shop.Store.Offcuts.All(Cancel));
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
    }

    [Fact]
    public async Task Whatever_is_booked_the_number_is_the_sum_of_its_entries_and_never_below_zero()
    {
        using var shop = await Shop();
        var acts = Gen.Select(Gen.Int[3, 5], Gen.Enum<OffcutKind>(), Gen.Int[0, 9]).Array[1, 4].Array[60].Single();
        var booked = 0;
        foreach (var act in acts)
        {
            booked += (await Book(shop, [.. act.Select(a => Line(a.Item2, a.Item3, width: a.Item1))])).Good ? 1 : 0;
        }

        Assert.True(booked > 5);
        Assert.True((await shop.Store.Stock.Audit(Cancel)).Good);
        var sums = (await shop.Store.Offcuts.Entries(most: 10_000, cancel: Cancel)).GroupBy(e => e.Width).Select(g => (g.Key, Sum: g.Sum(e => e.Change))).Where(g => g.Sum != 0);
        Assert.Equal(sums.OrderByDescending(s => s.Key), (await shop.Store.Offcuts.All(Cancel)).Select(o => (o.Width, o.Count)));
    }

    [Theory]
    [InlineData("UPDATE OffcutEntries SET Change = 1")]
    [InlineData("DELETE FROM OffcutEntries")]
    [InlineData("UPDATE OffcutBalances SET OnHand = -1")]
    public async Task The_database_itself_keeps_the_ledger_as_it_was_written(string sql)
    {
        using var shop = await Shop();
        await Book(shop, Line(OffcutKind.Shelved, 3));
        Assert.Throws<SqliteException>(() => Execute(shop, sql));
    }

    [Fact]
    public async Task An_audit_finds_a_number_that_was_tampered_with()
    {
        using var shop = await Shop();
        await Book(shop, Line(OffcutKind.Shelved, 3));
        Execute(shop, "UPDATE OffcutBalances SET OnHand = 4");
        var difference = Assert.Single((await shop.Store.Stock.Audit(Cancel)).Offcuts);
        Assert.Equal((3, 4), (difference.Sum, difference.Balance));
    }

    private static async Task<OpenedShop> Shop()
    {
        var shop = new OpenedShop();
        await shop.Stock();
        return shop;
    }

    private static OffcutLine Line(OffcutKind kind, int count, int width = 5) => new("F", Length.Inches(width), Length.Inches(8), kind, count, Plan);

    private static Task<Findings.Checked<OffcutsBooked>> Book(OpenedShop shop, params ImmutableArray<OffcutLine> lines) =>
        shop.Store.Offcuts.Book(new(Guid.NewGuid(), "Wren", lines), Cancel);

    private static void Execute(OpenedShop shop, string sql)
    {
        using var context = shop.Store.NewContext();
        context.Database.ExecuteSqlRaw(sql);
    }
}
