using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>
/// The stock as a ledger: entries are added, never changed, and what is on a bolt is their sum. A cut that was made is
/// never refused; where the bolt held more than the record said, the difference is booked as found with it.
/// </summary>
public sealed class StockLedger
{
    private readonly ShopStore store;

    internal StockLedger(ShopStore store) => this.store = store;

    /// <summary>All fabrics, all bolts with what is left on them, in the order of their numbers, and the leftovers.</summary>
    public async Task<Shelf> Shelf(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var fabrics = await context.Fabrics.AsNoTracking().OrderBy(f => f.Number).ToListAsync(cancel);
        var bolts = await (
            from bolt in context.Bolts.AsNoTracking()
            join balance in context.Balances on bolt.Id equals balance.Bolt
            orderby bolt.Id
            select new { bolt.Id, bolt.Fabric, bolt.Lot, balance.OnHandTicks }
        ).ToListAsync(cancel);
        return new(
            [.. fabrics.Select(FabricRows.Read)],
            [.. bolts.Select(b => new Bolt(b.Id, b.Fabric, b.Lot, Length.Ticks(b.OnHandTicks)))]
        )
        {
            Offcuts = await OffcutLedger.All(context, cancel),
        };
    }

    /// <summary>Books an act; the same id again gives what was booked then. Findings where nothing was booked.</summary>
    public Task<Checked<Booked>> Book(Booking booking, CancellationToken cancel = default) =>
        store.TryWrite(context => BookingDesk.Book(context, booking, store.Now(), cancel), cancel);

    /// <summary>What was booked under an id; null where nothing was. For a client that lost the answer.</summary>
    public async Task<Booked?> Find(Guid booking, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await BookingDesk.Find(context, booking, cancel);
    }

    /// <summary>A bolt's entries, the newest first.</summary>
    public async Task<ImmutableArray<StockEntry>> Entries(string bolt, int most = 100, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var query =
            from entry in context.Entries.AsNoTracking()
            where entry.Bolt == bolt
            orderby entry.Id descending
            join booking in context.Bookings on entry.Booking equals booking.Id
            select new { entry, booking };
        return [.. (await query.Take(most).ToListAsync(cancel)).Select(r => EntryRows.Read(r.entry, r.booking))];
    }

    /// <summary>Takes a stock file over, or only says what that would do.</summary>
    /// <param name="id">Made by the client: the same import is booked once.</param>
    public Task<Checked<StockImport>> Import(Guid id, string by, Shelf shelf, bool dryRun, CancellationToken cancel = default) =>
        store.TryWrite(context => Importing.Run(context, new(id, by, shelf, dryRun), store.Now(), cancel), cancel);

    /// <summary>Adds up every bolt's entries and holds the sum against its balance.</summary>
    public async Task<StockAudit> Audit(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await StockAudit.Of(context, cancel);
    }
}
