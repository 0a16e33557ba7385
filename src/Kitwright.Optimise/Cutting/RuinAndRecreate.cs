using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Takes some strips out of a plan, mostly those that cost more than the linear program would pay, and dives for a
/// shorter way of cutting their pieces.
/// </summary>
/// <remarks>
/// G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt and G. Dueck, "Record breaking optimization results using the ruin
/// and recreate principle", Journal of Computational Physics 159 (2000). The random numbers have a fixed seed.
/// </remarks>
internal sealed class RuinAndRecreate(StripGrid grid, ColumnGenerator generator, DivingHeuristic dive, WorkMeter meter)
{
    private const int SmallestRuin = 4;

    private readonly Random random = new(20_000);

    /// <summary>Goes on until it is told to be done or the work is used up; tells of every shorter plan.</summary>
    /// <param name="duals">Feasible duals of all pieces.</param>
    public void Improve(
        ImmutableArray<CutStrips> strips,
        ImmutableArray<long> duals,
        Func<bool> done,
        Action<ImmutableArray<CutStrips>> better
    )
    {
        strips = Merge(strips);
        if (strips.Sum(s => s.Times) <= SmallestRuin)
        {
            return;
        }

        for (var round = 0; !done() && !meter.MustStop; round++)
        {
            // A plan of few strips would only be searched as a whole again.
            var size = SmallestRuin + (round % Math.Min(9, strips.Sum(s => s.Times) - SmallestRuin));
            var (kept, taken) = Ruin(strips, duals, size);
            // Every other round accepts an equal length, to move on from where nothing is shorter.
            var below = CutStrips.TotalHeight(taken) + (round % 2);
            if (dive.Search(Yield(taken), below, discrepancies: 1, depth: 2) is { } recreated)
            {
                strips = Merge(Surplus.Remove(grid, [.. kept, .. recreated]));
                better(strips);
            }
        }
    }

    private (List<CutStrips> Kept, List<CutStrips> Taken) Ruin(ImmutableArray<CutStrips> strips, ImmutableArray<long> duals, int size)
    {
        var order = strips
            .SelectMany(s => Enumerable.Repeat(s.Pattern, Math.Min(s.Times, size)))
            .Select(pattern => (pattern, key: Math.Log(1 - random.NextDouble()) / (Waste(pattern, duals) + 0.02)))
            .OrderByDescending(x => x.key)
            .Take(size)
            .GroupBy(x => x.pattern)
            .ToDictionary(x => x.Key, x => x.Count());
        var kept = strips.Select(s => s with { Times = s.Times - order.GetValueOrDefault(s.Pattern) }).Where(s => s.Times > 0);
        return ([.. kept], [.. order.Select(x => new CutStrips(x.Key, x.Value))]);
    }

    /// <summary>The share of the strip's height that its pieces are not worth.</summary>
    private double Waste(StripPattern pattern, ImmutableArray<long> duals)
    {
        var worth = 0.0;
        foreach (var cell in pattern.Cells)
        {
            worth += (double)duals[grid.Ways[cell.Way].Piece] * cell.Times;
        }

        return Math.Max(0, 1 - (worth / generator.Scale / pattern.Height));
    }

    private int[] Yield(List<CutStrips> strips)
    {
        var yield = new int[grid.Pieces.Length];
        foreach (var (pattern, times) in strips)
        {
            foreach (var cell in pattern.Cells)
            {
                yield[grid.Ways[cell.Way].Piece] += cell.Times * times;
            }
        }

        return yield;
    }

    private static ImmutableArray<CutStrips> Merge(IEnumerable<CutStrips> strips) =>
        [.. strips.GroupBy(s => s.Pattern).Select(same => new CutStrips(same.Key, same.Sum(s => s.Times)))];
}
