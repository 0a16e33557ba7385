using System.Collections.Immutable;
using System.Security.Cryptography;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>
/// Leftovers as stock, in a ledger of their own: entries are added, never changed, and how many there are of a size is
/// their sum, never below zero. What is taken from the shelf must be there; of two stations only one gets the last piece.
/// </summary>
public sealed class OffcutLedger
{
    private readonly ShopStore store;

    internal OffcutLedger(ShopStore store) => this.store = store;

    /// <summary>All leftovers on the shelf, by fabric, the largest first.</summary>
    public async Task<ImmutableArray<Offcut>> All(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await All(context, cancel);
    }

    /// <summary>Books an act; the same id again gives what was booked then. Findings where nothing was booked.</summary>
    public Task<Checked<OffcutsBooked>> Book(OffcutBooking booking, CancellationToken cancel = default) =>
        store.TryWrite(context => OffcutDesk.Book(context, booking, store.Now(), cancel), cancel);

    /// <summary>
    /// Takes a booking back by entries the other way. Its id follows from the booking's, so that nothing is taken back
    /// twice. A finding where what it brought has gone meanwhile.
    /// </summary>
    public Task<Checked<OffcutsBooked>> TakeBack(Guid booking, string by, CancellationToken cancel = default) =>
        store.TryWrite(
            async context =>
            {
                if (await OffcutDesk.Find(context, IdOfTakingBack(booking), cancel) is { } before)
                {
                    return Checked<OffcutsBooked>.Of(before);
                }

                if (await OffcutDesk.Find(context, booking, cancel) is not { Entries.IsEmpty: false } booked)
                {
                    return Checked<OffcutsBooked>.Failed(Finding.Of("leftovers.no-booking", $"booking/{booking}"));
                }

                // The last first: what came and went in one act is there again before it is taken.
                var lines = booked.Entries.Reverse().Select(e => new OffcutLine(e.Fabric, e.Width, e.Height, e.Kind.Reverse(), Math.Abs(e.Change), e.For));
                return await OffcutDesk.Book(context, new(IdOfTakingBack(booking), by, [.. lines]), store.Now(), cancel);
            },
            cancel
        );

    public async Task<bool> IsTakenBack(Guid booking, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await BookingDesk.Earlier(context, IdOfTakingBack(booking), cancel) is not null;
    }

    /// <summary>What was booked under an id; null where nothing was. For a client that lost the answer.</summary>
    public async Task<OffcutsBooked?> Find(Guid booking, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        return await OffcutDesk.Find(context, booking, cancel) is { Entries.IsEmpty: false } found ? found : null;
    }

    /// <summary>The newest entries first; of one purpose where it is given.</summary>
    public async Task<ImmutableArray<OffcutEntry>> Entries(string? of = null, int most = 100, CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var query =
            from entry in context.OffcutEntries.AsNoTracking()
            where of == null || entry.For == of
            orderby entry.Id descending
            join booking in context.Bookings on entry.Booking equals booking.Id
            select new { entry, booking };
        return [.. (await query.Take(most).ToListAsync(cancel)).Select(r => OffcutDesk.Read(r.entry, r.booking))];
    }

    internal static async Task<ImmutableArray<Offcut>> All(ShopContext context, CancellationToken cancel)
    {
        var rows = await context
            .OffcutBalances.AsNoTracking()
            .Where(b => b.OnHand > 0)
            .Select(b => new
            {
                Row = b,
                From = context
                    .OffcutEntries.Where(e => e.Fabric == b.Fabric && e.WidthTicks == b.WidthTicks && e.HeightTicks == b.HeightTicks && e.Kind == OffcutKind.Shelved)
                    .OrderByDescending(e => e.Id)
                    .Select(e => e.For)
                    .FirstOrDefault(),
            })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => new Offcut(r.Row.Fabric, Length.Ticks(r.Row.WidthTicks), Length.Ticks(r.Row.HeightTicks), r.Row.OnHand) { From = r.From })
                .OrderBy(o => o.Fabric, StringComparer.Ordinal)
                .ThenByDescending(o => o.Width.InInches * o.Height.InInches)
                .ThenByDescending(o => o.Width),
        ];
    }

    private static Guid IdOfTakingBack(Guid booking) => new(SHA256.HashData([.. "taken back "u8, .. booking.ToByteArray()]).AsSpan(0, 16));
}
