using System.Collections.Immutable;
using Kitwright.Measure;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>What an audit of the ledger found.</summary>
/// <param name="Bolts">How many bolts were looked at.</param>
/// <param name="Entries">How many entries were added up.</param>
public sealed record StockAudit(int Bolts, long Entries, ImmutableArray<AuditDifference> Differences)
{
    public ImmutableArray<OffcutDifference> Offcuts { get; init; } = [];

    public bool Good => Differences.IsEmpty && Offcuts.IsEmpty;

    internal static async Task<StockAudit> Of(ShopContext context, CancellationToken cancel)
    {
        // One snapshot for both sides.
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        var sums = await context.Entries
            .GroupBy(e => e.Bolt)
            .Select(g => new { Bolt = g.Key, Ticks = g.Sum(e => e.Ticks), Count = g.Count() })
            .ToDictionaryAsync(g => g.Bolt, StringComparer.Ordinal, cancel);
        var bolts = await (
            from bolt in context.Bolts
            join balance in context.Balances on bolt.Id equals balance.Bolt into held
            from balance in held.DefaultIfEmpty()
            orderby bolt.Id
            select new { bolt.Id, Ticks = (long?)balance.OnHandTicks, Count = (int?)balance.Entries }
        ).ToListAsync(cancel);
        var differences = bolts
            .Select(b => (b, sum: sums.TryGetValue(b.Id, out var s) ? (s.Ticks, s.Count) : (0, 0)))
            .Where(x => (x.b.Ticks, x.b.Count) != (x.sum.Ticks, x.sum.Count) || x.sum.Ticks < 0)
            .Select(x => new AuditDifference(
                x.b.Id,
                Length.Ticks(x.sum.Ticks),
                x.b.Ticks is { } ticks ? Length.Ticks(ticks) : null,
                x.sum.Count,
                x.b.Count ?? 0
            ));
        return new(bolts.Count, sums.Values.Sum(s => (long)s.Count), [.. differences]) { Offcuts = await OfOffcuts(context, cancel) };
    }

    // Every entry has its balance: the database says so.
    private static async Task<ImmutableArray<OffcutDifference>> OfOffcuts(ShopContext context, CancellationToken cancel)
    {
        var sums = await context
            .OffcutEntries.GroupBy(e => new { e.Fabric, e.WidthTicks, e.HeightTicks })
            .Select(g => new { g.Key, Sum = g.Sum(e => e.Change), Count = g.Count() })
            .ToDictionaryAsync(g => g.Key, cancel);
        var balances = await context.OffcutBalances.AsNoTracking().ToListAsync(cancel);
        return
        [
            .. balances
                .Select(b => (b, Sum: sums.GetValueOrDefault(new { b.Fabric, b.WidthTicks, b.HeightTicks })))
                .Where(x => (x.Sum?.Sum ?? 0, x.Sum?.Count ?? 0) != (x.b.OnHand, x.b.Entries))
                .Select(x => new OffcutDifference(x.b.Fabric, Length.Ticks(x.b.WidthTicks), Length.Ticks(x.b.HeightTicks), x.Sum?.Sum ?? 0, x.b.OnHand)),
        ];
    }
}

/// <summary>A bolt whose balance is not the sum of its entries, or whose sum is below zero.</summary>
/// <param name="Balance">Null where there is no balance row.</param>
public sealed record AuditDifference(string Bolt, Length Sum, Length? Balance, int Entries, int EntriesOnRecord);

/// <summary>Leftovers of a size whose balance is not the sum of their entries.</summary>
public sealed record OffcutDifference(string Fabric, Length Width, Length Height, int Sum, int Balance);
