using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>Books an act with leftovers inside a transaction: entries and balances together.</summary>
internal static class OffcutDesk
{
    private const int LongestText = 200;
    private const int MostPieces = 100_000;
    private const int MostLines = 10_000;

    private static readonly Length Longest = Length.Yards(1_000);

    public static async Task<Checked<OffcutsBooked>> Book(ShopContext context, OffcutBooking booking, DateTimeOffset now, CancellationToken cancel)
    {
        var asked = booking.Asked();
        if (await BookingDesk.Earlier(context, booking.Id, cancel) is { } earlier)
        {
            return earlier.Asked == asked
                ? Checked<OffcutsBooked>.Of((await Find(context, booking.Id, cancel))!)
                : Checked<OffcutsBooked>.Failed(BookingDesk.Other(earlier));
        }

        var names = booking.Lines.Select(line => line.Fabric).Distinct().ToList();
        var balances = await context
            .OffcutBalances.Where(b => EF.Parameter(names).Contains(b.Fabric))
            .ToDictionaryAsync(b => (b.Fabric, b.WidthTicks, b.HeightTicks), cancel);
        var fabrics = await context.Fabrics.Where(f => EF.Parameter(names).Contains(f.Number)).Select(f => new { f.Number, f.WidthTicks }).ToListAsync(cancel);
        // A fabric may since have been put right to a narrower width: what is on the shelf of it can still be cut up.
        var widest = fabrics.ToDictionary(
            f => f.Number,
            f => Length.Ticks(balances.Values.Where(b => b.Fabric == f.Number && b.OnHand > 0).Select(b => b.WidthTicks).Append(f.WidthTicks).Max()),
            StringComparer.Ordinal
        );
        ImmutableArray<Finding> findings = [.. Findings(booking, widest)];
        if (!findings.IsEmpty)
        {
            return Checked<OffcutsBooked>.Failed(findings);
        }

        var row = new BookingRow { Id = booking.Id, Asked = asked, By = booking.By, At = now };
        var entries = new List<OffcutEntryRow>();
        foreach (var line in booking.Lines)
        {
            var key = (line.Fabric, line.Width.InTicks(), line.Height.InTicks());
            var balance = balances.GetValueOrDefault(key) ?? new() { Fabric = key.Fabric, WidthTicks = key.Item2, HeightTicks = key.Item3, OnHand = 0, Entries = 0 };
            var change = line.Kind == OffcutKind.Counted ? line.Count - balance.OnHand : line.Kind.Brings() ? line.Count : -line.Count;
            if (balance.OnHand + change < 0 || balance.OnHand + change > MostPieces)
            {
                // Nothing of it is kept, the lines before this one neither.
                context.ChangeTracker.Clear();
                return Checked<OffcutsBooked>.Failed(change < 0 ? Gone(line, balance.OnHand) : TooMany(line));
            }

            if (change == 0)
            {
                continue;
            }

            if (balances.TryAdd(key, balance))
            {
                context.OffcutBalances.Add(balance);
            }

            balance.OnHand += change;
            balance.Entries++;
            entries.Add(Entry(row, balance, line.Kind != OffcutKind.Counted ? line.Kind : change > 0 ? OffcutKind.Found : OffcutKind.Lost, change, line.For));
        }

        context.Bookings.Add(row);
        context.OffcutEntries.AddRange(entries);
        await context.SaveChangesAsync(cancel);
        return Checked<OffcutsBooked>.Of(new(row.Id, false, [.. entries.Select(e => Read(e, row))]));
    }

    public static async Task<OffcutsBooked?> Find(ShopContext context, Guid id, CancellationToken cancel)
    {
        if (await BookingDesk.Earlier(context, id, cancel) is not { } row)
        {
            return null;
        }

        var entries = await context.OffcutEntries.AsNoTracking().Where(e => e.Booking == id).OrderBy(e => e.Id).ToListAsync(cancel);
        return new(id, true, [.. entries.Select(e => Read(e, row))]);
    }

    public static OffcutEntry Read(OffcutEntryRow entry, BookingRow booking) =>
        new(entry.Id, entry.Booking, entry.Fabric, Length.Ticks(entry.WidthTicks), Length.Ticks(entry.HeightTicks), entry.Kind, entry.Change, entry.For, booking.By, booking.At);

    private static OffcutEntryRow Entry(BookingRow row, OffcutBalanceRow balance, OffcutKind kind, int change, string? what) =>
        new()
        {
            Booking = row.Id,
            Fabric = balance.Fabric,
            WidthTicks = balance.WidthTicks,
            HeightTicks = balance.HeightTicks,
            Kind = kind,
            Change = change,
            For = what,
        };

    private static IEnumerable<Finding> Findings(OffcutBooking booking, Dictionary<string, Length> widest)
    {
        if (booking.Lines.IsEmpty || booking.Lines.Length > MostLines)
        {
            yield return Finding.Of("leftovers.nothing", $"booking/{booking.Id}", ("most", MostLines));
        }

        if (booking.By.Trim().Length == 0 || booking.By.Length > LongestText)
        {
            yield return Finding.Of("ledger.who", $"booking/{booking.Id}", ("most", LongestText));
        }

        foreach (var line in booking.Lines)
        {
            if (!widest.TryGetValue(line.Fabric, out var width))
            {
                yield return Finding.Of("leftovers.unknown-fabric", Place(line), ("fabric", line.Fabric));
            }

            if (!Fits(line.Width) || !Fits(line.Height))
            {
                yield return Finding.Of("leftovers.size", Place(line), ("width", line.Width), ("height", line.Height), ("most", Longest));
            }
            else if (line.Kind is OffcutKind.Shelved or OffcutKind.Counted && width.Sign > 0 && line.Width > width)
            {
                yield return Finding.Of("leftovers.wider", Place(line), ("fabric", line.Fabric), ("width", line.Width), ("widest", width));
            }

            if (line.Count < (line.Kind == OffcutKind.Counted ? 0 : 1) || line.Count > MostPieces)
            {
                yield return Finding.Of("leftovers.count", Place(line), ("count", line.Count), ("most", MostPieces));
            }

            if (line.For?.Length > LongestText)
            {
                yield return Finding.Of("ledger.for", Place(line), ("most", LongestText));
            }
        }
    }

    private static bool Fits(Length side) => side.Sign > 0 && side <= Longest && side.TryTicks(out _);

    private static Finding Gone(OffcutLine line, int there) =>
        Finding.Of("leftovers.gone", Place(line), ("count", line.Count), ("there", there), ("fabric", line.Fabric), ("width", line.Width), ("height", line.Height));

    private static Finding TooMany(OffcutLine line) => Finding.Of("leftovers.count", Place(line), ("count", line.Count), ("most", MostPieces));

    private static string Place(OffcutLine line) => $"leftovers/{line.Fabric}";
}
