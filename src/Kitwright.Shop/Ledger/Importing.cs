using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Shop.Rows;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>A stock file to be taken over.</summary>
/// <param name="Demo">Whether it is the demo shop's.</param>
internal sealed record ImportRequest(Guid Id, string By, Shelf Shelf, bool DryRun, bool Demo = false)
{
    /// <summary>SHA-256, hexadecimal, of who took over what.</summary>
    public string Asked() =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new { By, Shelf = new { Shelf.Fabrics, Shelf.Bolts } }, PlanJson.Options)));
}

/// <summary>
/// Takes a stock file over in one booking: new fabrics and bolts are added, bolts that are there already are counted,
/// fabrics that differ are changed. A bolt that is there under another fabric or lot keeps all of it from being saved.
/// </summary>
internal static class Importing
{
    public static async Task<Checked<StockImport>> Run(ShopContext context, ImportRequest request, DateTimeOffset now, CancellationToken cancel)
    {
        var earlier = await BookingDesk.Earlier(context, request.Id, cancel);
        if (earlier is not null && earlier.Asked != request.Asked())
        {
            return Checked<StockImport>.Failed(BookingDesk.Other(earlier));
        }

        var fabrics = await context.Fabrics.ToDictionaryAsync(f => f.Number, StringComparer.Ordinal, cancel);
        var bolts = await context.Bolts.AsNoTracking().ToDictionaryAsync(b => b.Id, StringComparer.Ordinal, cancel);
        var balances = await context.Balances.AsNoTracking().ToDictionaryAsync(b => b.Bolt, StringComparer.Ordinal, cancel);
        ImmutableArray<Finding> findings =
        [
            .. request.Shelf.Bolts.Where(b => bolts.TryGetValue(b.Id, out var held) && (held.Fabric, held.Lot) != (b.Fabric, b.Lot))
                .Select(b => Finding.Of("ledger.bolt-differs", $"bolt/{b.Id}", ("bolt", b.Id), ("fabric", bolts[b.Id].Fabric), ("lot", bolts[b.Id].Lot))),
        ];
        var import = new StockImport(
            request.DryRun,
            earlier is not null,
            [.. request.Shelf.Fabrics.Where(f => !fabrics.ContainsKey(f.Number))],
            [.. request.Shelf.Fabrics.Where(f => fabrics.ContainsKey(f.Number)).Select(f => new FabricChange(FabricRows.Read(fabrics[f.Number]), f)).Where(c => c.Before != c.After)],
            [.. request.Shelf.Bolts.Where(b => !bolts.ContainsKey(b.Id))],
            [.. request.Shelf.Bolts.Where(b => balances.ContainsKey(b.Id)).Select(b => new BoltCount(b.Id, Length.Ticks(balances[b.Id].OnHandTicks), b.OnHand)).Where(c => c.OnRecord != c.Measured)],
            [.. bolts.Keys.Except(request.Shelf.Bolts.Select(b => b.Id), StringComparer.Ordinal).Order(StringComparer.Ordinal)]
        );
        if (!findings.IsEmpty || request.DryRun || import.Again)
        {
            return new(findings.IsEmpty ? import : null, findings);
        }

        await Save(context, request, import, fabrics, now, cancel);
        return Checked<StockImport>.Of(import);
    }

    private static async Task Save(
        ShopContext context,
        ImportRequest request,
        StockImport import,
        Dictionary<string, FabricRow> fabrics,
        DateTimeOffset now,
        CancellationToken cancel
    )
    {
        context.Fabrics.AddRange(import.NewFabrics.Select(f => FabricRows.New(f, request.Demo)));
        foreach (var change in import.ChangedFabrics)
        {
            FabricRows.Write(change.After, fabrics[change.After.Number]);
        }

        context.Bolts.AddRange(import.Received.Select(b => new BoltRow { Id = b.Id, Fabric = b.Fabric, Lot = b.Lot, Demo = request.Demo }));
        context.Balances.AddRange(import.Received.Select(b => new BalanceRow { Bolt = b.Id, OnHandTicks = 0, Entries = 0 }));
        var row = new BookingRow { Id = request.Id, Asked = request.Asked(), By = request.By, At = now };
        context.Bookings.Add(row);
        await context.SaveChangesAsync(cancel);
        ImmutableArray<BookingLine> lines =
        [
            .. import.Received.Where(b => !b.OnHand.IsZero).Select(b => new BookingLine(b.Id, EntryKind.Received, b.OnHand)),
            .. import.Counted.Select(c => new BookingLine(c.Bolt, EntryKind.Counted, c.Measured)),
        ];
        // As one parameter: a list of single ones has an end.
        var moved = lines.Select(l => l.Bolt).ToList();
        var balances = await context.Balances.Where(b => EF.Parameter(moved).Contains(b.Bolt)).ToDictionaryAsync(b => b.Bolt, StringComparer.Ordinal, cancel);
        await BookingDesk.Add(context, row, lines, balances, cancel);
    }
}
