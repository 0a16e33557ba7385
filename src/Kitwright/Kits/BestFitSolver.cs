using System.Collections.Immutable;

namespace Kitwright.Kits;

/// <summary>Best fit decreasing as a solver.</summary>
internal sealed class BestFitSolver : IBoltSolver
{
    public BoltAllocation Allocate(BoltProblem problem, BoltAllocation? start, CancellationToken cancel) =>
        BestFitDecreasing.Solve(problem, start, cancel);

    /// <summary>
    /// First the greatest share of what is wanted that all lines can have alike, then line by line what still fits:
    /// bisection, each time by best fit in every short fabric.
    /// </summary>
    public KitFilling Fill(ImmutableArray<BoltProblem> fabrics, CancellationToken cancel)
    {
        var wanted = fabrics.SelectMany(f => f.Kits).GroupBy(k => k.Colorway).ToImmutableSortedDictionary(g => g.Key, g => g.First().Kits, StringComparer.Ordinal);
        var most = wanted.Values.DefaultIfEmpty(0).Max();
        var share = Greatest(most, fabrics, tried => wanted.ToImmutableSortedDictionary(w => w.Key, w => (int)((long)w.Value * tried / most), StringComparer.Ordinal), cancel);
        var kits = wanted.ToImmutableSortedDictionary(w => w.Key, w => most == 0 ? 0 : (int)((long)w.Value * share / most), StringComparer.Ordinal);
        foreach (var (colorway, count) in wanted)
        {
            var held = kits;
            var more = Greatest(count - kits[colorway], fabrics, tried => held.SetItem(colorway, held[colorway] + tried), cancel);
            kits = kits.SetItem(colorway, kits[colorway] + more);
        }

        return new(
            kits,
            wanted.Sum(w => Math.Min(w.Value, fabrics.Min(f => AtMost(f, w.Key)))),
            [.. fabrics.Select(f => BestFitDecreasing.Solve(Of(f, kits), null, cancel))]
        );
    }

    /// <summary>A fabric's problem with so many kits of each line.</summary>
    public static BoltProblem Of(BoltProblem fabric, ImmutableSortedDictionary<string, int> kits) =>
        fabric with { Kits = [.. fabric.Kits.Select(k => k with { Kits = kits[k.Colorway] })] };

    private static int Greatest(
        int most,
        ImmutableArray<BoltProblem> fabrics,
        Func<int, ImmutableSortedDictionary<string, int>> kits,
        CancellationToken cancel
    )
    {
        var (least, above) = (0, most + 1);
        while (above - least > 1)
        {
            cancel.ThrowIfCancellationRequested();
            var middle = least + ((above - least) / 2);
            var tried = kits(middle);
            if (fabrics.All(f => BestFitDecreasing.Serves(Of(f, tried))))
            {
                least = middle;
            }
            else
            {
                above = middle;
            }
        }

        return least;
    }

    private static int AtMost(BoltProblem fabric, string colorway)
    {
        var line = fabric.Kits.FirstOrDefault(k => k.Colorway == colorway);
        return line is null ? int.MaxValue : (int)Math.Min(int.MaxValue, AllocationBounds.Kits(new(fabric with { Kits = [line] })));
    }
}
