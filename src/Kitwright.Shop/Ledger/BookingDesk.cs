using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>Books an act inside a transaction: entries and balances together.</summary>
internal static class BookingDesk
{
    private const int LongestText = 200;

    /// <summary>More than any bolt holds: keeps sums far from the ends of a whole number.</summary>
    private static readonly Length Longest = Length.Yards(10_000);

    public static async Task<Checked<Booked>> Book(ShopContext context, Booking booking, DateTimeOffset now, CancellationToken cancel)
    {
        var asked = booking.Asked();
        if (await Earlier(context, booking.Id, cancel) is { } earlier)
        {
            return earlier.Asked == asked
                ? Checked<Booked>.Of((await Find(context, booking.Id, cancel))!)
                : Checked<Booked>.Failed(Other(earlier));
        }

        var bolts = booking.Lines.Select(l => l.Bolt).Distinct().ToList();
        var balances = await context.Balances.Where(b => EF.Parameter(bolts).Contains(b.Bolt)).ToDictionaryAsync(b => b.Bolt, StringComparer.Ordinal, cancel);
        ImmutableArray<Finding> findings = [.. Findings(booking, balances)];
        if (!findings.IsEmpty)
        {
            return Checked<Booked>.Failed(findings);
        }

        var row = new BookingRow { Id = booking.Id, Asked = asked, By = booking.By, At = now };
        context.Bookings.Add(row);
        return Checked<Booked>.Of(await Add(context, row, booking.Lines, balances, cancel));
    }

    public static Task<BookingRow?> Earlier(ShopContext context, Guid id, CancellationToken cancel) =>
        context.Bookings.AsNoTracking().SingleOrDefaultAsync(b => b.Id == id, cancel);

    /// <summary>The id stands for another act already.</summary>
    public static Finding Other(BookingRow earlier) =>
        Finding.Of("ledger.other-booking", $"booking/{earlier.Id}", ("by", earlier.By));

    /// <summary>Adds the entries of lines that were checked, and moves the balances with them.</summary>
    public static async Task<Booked> Add(
        ShopContext context,
        BookingRow row,
        ImmutableArray<BookingLine> lines,
        Dictionary<string, BalanceRow> balances,
        CancellationToken cancel
    )
    {
        var entries = lines.SelectMany(line => EntriesOf(balances[line.Bolt], row.Id, line)).ToList();
        context.Entries.AddRange(entries);
        await context.SaveChangesAsync(cancel);
        return new(row.Id, false, [.. entries.Select(e => EntryRows.Read(e, row))]);
    }

    public static async Task<Booked?> Find(ShopContext context, Guid id, CancellationToken cancel)
    {
        if (await Earlier(context, id, cancel) is not { } row)
        {
            return null;
        }

        var entries = await context.Entries.AsNoTracking().Where(e => e.Booking == id).OrderBy(e => e.Id).ToListAsync(cancel);
        return new(id, true, [.. entries.Select(e => EntryRows.Read(e, row))]);
    }

    private static IEnumerable<Finding> Findings(Booking booking, Dictionary<string, BalanceRow> balances)
    {
        if (booking.Lines.IsEmpty)
        {
            yield return Finding.Of("ledger.nothing", Place(booking));
        }

        if (booking.By.Trim().Length == 0 || booking.By.Length > LongestText)
        {
            yield return Finding.Of("ledger.who", Place(booking), ("most", LongestText));
        }

        foreach (var line in booking.Lines)
        {
            if (!balances.TryGetValue(line.Bolt, out var balance))
            {
                yield return Finding.Of("ledger.unknown-bolt", Place(line), ("bolt", line.Bolt));
            }
            else if (line.Kind == EntryKind.Lost && line.Length > Length.Ticks(balance.OnHandTicks))
            {
                yield return Finding.Of("ledger.more-lost", Place(line), ("length", line.Length), ("there", Length.Ticks(balance.OnHandTicks)));
            }

            var least = line.Kind == EntryKind.Counted ? Length.Zero : Length.Ticks(1);
            if (line.Length < least || line.Length > Longest || !line.Length.TryTicks(out _))
            {
                yield return Finding.Of("ledger.length", Place(line), ("length", line.Length), ("most", Longest));
            }

            if (line.For?.Length > LongestText)
            {
                yield return Finding.Of("ledger.for", Place(line), ("most", LongestText));
            }
        }
    }

    private static IEnumerable<EntryRow> EntriesOf(BalanceRow balance, Guid booking, BookingLine line)
    {
        var ticks = line.Length.InTicks();
        var change = line.Kind switch
        {
            EntryKind.Counted => ticks - balance.OnHandTicks,
            _ when line.Kind.Brings() => ticks,
            _ => -ticks,
        };
        if (line.Kind == EntryKind.Counted)
        {
            return change == 0 ? [] : [Entry(change > 0 ? EntryKind.Found : EntryKind.Lost, change)];
        }

        // What was cut was there: the record held too little.
        var missing = -(balance.OnHandTicks + change);
        return missing > 0 ? [Entry(EntryKind.Found, missing), Entry(line.Kind, change)] : [Entry(line.Kind, change)];

        EntryRow Entry(EntryKind kind, long by)
        {
            balance.OnHandTicks += by;
            balance.Entries++;
            return new() { Booking = booking, Bolt = line.Bolt, Kind = kind, Ticks = by, For = line.For };
        }
    }

    private static string Place(Booking booking) => $"booking/{booking.Id}";

    private static string Place(BookingLine line) => $"bolt/{line.Bolt}";
}
