using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Checking.Exact;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// A bound by cases, as the proof describes it: that the cases leave no plan out, that in each no strip is worth more than
/// its height, and what the demand is then worth; the least of all cases.
/// </summary>
internal static class CaseBound
{
    /// <summary>More entries than this no planner writes.</summary>
    private const int MostCases = 10_000;

    /// <summary>Null where the entries are no tree, or the duals of a case not what they should be.</summary>
    /// <exception cref="BeyondLimits">There are too many, or they would take too long.</exception>
    public static BigInteger? Of(ClothPlan cloth, Grid grid, ImmutableArray<ProofCase> cases)
    {
        if (cases.Length > MostCases)
        {
            throw new BeyondLimits();
        }

        BigInteger? least = null;
        var open = new Stack<Limits>([Natural(grid)]);
        foreach (var entry in cases)
        {
            if (!open.TryPop(out var limits))
            {
                return null;
            }

            switch (entry)
            {
                case { Split: { } split, Leaf: null }:
                    if (Parted(cloth, grid, limits, split) is not var (fewer, more))
                    {
                        return null;
                    }

                    open.Push(more);
                    open.Push(fewer);
                    break;
                case { Leaf: { } leaf, Split: null }:
                    if (OfLeaf(cloth, grid, limits, leaf, cases.Length) is not { } bound)
                    {
                        return null;
                    }

                    least = least is { } so ? BigInteger.Min(so, bound) : bound;
                    break;
                default:
                    return null;
            }
        }

        return open.Count == 0 ? least : null;
    }

    /// <summary>Strips of each candidate height: each holds a piece as high as itself.</summary>
    private static Limits Natural(Grid grid) =>
        new(
            [.. grid.Heights.Select(_ => BigInteger.Zero)],
            [.. grid.Heights.Select(height => grid.Ways.Where(way => way.Height == height).DistinctBy(way => way.Demand).Aggregate(BigInteger.Zero, (sum, way) => sum + way.Count))]
        );

    private static (Limits Fewer, Limits More)? Parted(ClothPlan cloth, Grid grid, Limits limits, CountCases split)
    {
        var units = split.Height / cloth.Proof.Unit;
        var at = units.IsInteger ? Array.FindIndex(grid.Heights, height => height == units.Numerator) : -1;
        return at < 0 || split.AtMost < 0
            ? null
            : (
                limits with { Most = limits.Most.SetItem(at, BigInteger.Min(limits.Most[at], split.AtMost)) },
                limits with { Least = limits.Least.SetItem(at, BigInteger.Max(limits.Least[at], split.AtMost + BigInteger.One)) }
            );
    }

    private static BigInteger? OfLeaf(ClothPlan cloth, Grid grid, Limits limits, CaseDuals leaf, int cases)
    {
        var scale = (BigInteger)cloth.Proof.Scale;
        if (leaf.Duals.Length != cloth.Demand.Length || leaf.HeightDuals.Length != grid.Heights.Length || Grid.Of(cloth, leaf.Duals) is not { } valued)
        {
            return null;
        }

        var worth = valued.Worth;
        foreach (var (at, (height, value)) in FarleyBound.BestByHeight(valued, cases).Index())
        {
            var dual = (BigInteger)leaf.HeightDuals[at];
            if (value + dual > height * scale)
            {
                return null;
            }

            worth += dual * (dual.Sign > 0 ? limits.Least[at] : limits.Most[at]);
        }

        return new Rational(worth, scale).Ceiling();
    }

    /// <summary>Between how many strips of each candidate height.</summary>
    private sealed record Limits(ImmutableArray<BigInteger> Least, ImmutableArray<BigInteger> Most);
}
