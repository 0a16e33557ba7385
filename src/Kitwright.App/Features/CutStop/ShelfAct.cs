using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Shop;
using Kitwright.Shop.Ledger;

namespace Kitwright.App.Features.CutStop;

/// <summary>What was booked of leftovers for one plan, as it is shown and can be taken back.</summary>
/// <param name="Count">Pieces.</param>
/// <param name="Undone">Whether it has been taken back.</param>
public sealed record ShelfAct(Guid Id, string By, string At, int Count, bool Undone)
{
    private const int MostEntries = 1_000;

    /// <summary>The acts of one kind for a path, the newest first.</summary>
    public static async Task<ImmutableArray<ShelfAct>> Of(ShopStore store, string path, OffcutKind kind)
    {
        var entries = await store.Offcuts.Entries(path, MostEntries);
        var acts = ImmutableArray.CreateBuilder<ShelfAct>();
        foreach (var act in entries.GroupBy(entry => entry.Booking).Where(act => act.Any(entry => entry.Kind == kind) && (kind == OffcutKind.Used || act.All(entry => entry.Kind != OffcutKind.Used))))
        {
            var first = act.First();
            var at = first.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            acts.Add(new(act.Key, first.By, at, act.Where(entry => entry.Kind == kind).Sum(entry => Math.Abs(entry.Change)), await store.Offcuts.IsTakenBack(act.Key)));
        }

        return acts.ToImmutable();
    }
}
