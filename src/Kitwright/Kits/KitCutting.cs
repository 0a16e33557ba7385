using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>What the needs of a colorway ask of each fabric, and which of its cuts must be of one lot.</summary>
/// <remarks>
/// Dye lots differ to the eye, so a project is bought from one ([RECH]): the cuts of one fabric for one kit come from
/// one lot where they show on the same face (top and binding) or serve the same role. A backing may be of another lot.
/// </remarks>
public static class KitCutting
{
    /// <summary>The cuts of each fabric for one line, by stock number; needs without a fabric are left out.</summary>
    public static ImmutableSortedDictionary<string, KitCuts> Of(KitLine line)
    {
        var byFabric = ImmutableSortedDictionary.CreateBuilder<string, KitCuts>(StringComparer.Ordinal);
        var needs = line.Needs.Lengths;
        foreach (var fabric in Enumerable.Range(0, needs.Length).Where(i => needs[i].Fabric is not null).GroupBy(i => needs[i].Fabric!))
        {
            byFabric.Add(fabric.Key, new(line.Colorway, line.Kits, LotSets(needs, [.. fabric])));
        }

        return byFabric.ToImmutable();
    }

    private static ImmutableArray<LotSet> LotSets(ImmutableArray<Need> needs, List<int> indices)
    {
        var sets = new List<List<int>>();
        foreach (var index in indices)
        {
            List<List<int>> joined = [.. sets.Where(set => set.Any(other => OneLot(needs[index], needs[other])))];
            sets.RemoveAll(joined.Contains);
            sets.Add([.. joined.SelectMany(set => set), index]);
        }

        return [.. sets.OrderBy(set => set.Min()).Select(set => new LotSet([.. set.Order().Select(i => CutOf(needs[i], i))]))];
    }

    private static bool OneLot(Need x, Need y) =>
        (x.Kind != NeedKind.Backing && y.Kind != NeedKind.Backing) || x.Roles.Intersect(y.Roles).Any();

    // Cuts lie on the stored grid: rounded up, so that the bag never holds less than is printed.
    private static KitCut CutOf(Need need, int index) =>
        new(index, need.Letter, need.Kind, need.Length.RoundUpTo(Length.Ticks(1)));
}
