using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Among plans that take no more cloth (or, by the step, no longer purchase) the one that is easiest for a person:
/// fewest ruler settings first, then fewest cuts.
/// </summary>
/// <param name="purchase">Null where every inch counts and the length must stay.</param>
internal sealed class EasierCutting(StripGrid grid, StripSearch search, PurchaseSteps? purchase, WorkMeter meter)
{
    private const int MostColumns = 1000;

    public ImmutableArray<CutStrips> Choose()
    {
        var longest = purchase?.LongestInStep(search.Best) ?? search.Length;
        var highest = search.Best.Max(s => s.Pattern.Height);
        var best = new[] { search.Best, FirstFit.Strips(grid), HandbookWay.Strips(grid) }
            .Where(s => CutStrips.TotalHeight(s) <= longest && s.Max(x => x.Pattern.Height) <= highest)
            .MinBy(s => Labor.Of(grid, s));
        if (search.FeasibleDuals is not { } duals || Labor.Of(grid, best).IsLeast || meter.MustStop)
        {
            return best;
        }

        var columns = Columns(duals, longest, highest).Union(best.Select(s => Column.Of(grid, s.Pattern))).ToImmutableArray();
        return new FewestSettings(grid, columns, longest, meter).Improve(best);
    }

    /// <summary>All columns that such a plan can use, or the most promising of those seen where they are too many.</summary>
    private IEnumerable<Column> Columns(ImmutableArray<long> duals, long longest, int highest)
    {
        var worth = Int128.Zero;
        for (var piece = 0; piece < duals.Length; piece++)
        {
            worth += (Int128)duals[piece] * grid.Counts[piece];
        }

        var slack = (long)(((Int128)longest * search.Generator.Scale) - worth);
        var all = new ReducedCostEnumeration(grid, duals, search.Generator.Scale, meter).Columns(slack, MostColumns);
        return (all ?? Seen(duals, slack)).Where(column => column.Height <= highest);
    }

    private IEnumerable<Column> Seen(ImmutableArray<long> duals, long slack)
    {
        long ReducedCost(Column column)
        {
            var cost = column.Height * search.Generator.Scale;
            for (var i = 0; i < column.Pieces.Length; i++)
            {
                cost -= duals[column.Pieces[i]] * column.Copies[i];
            }

            return cost;
        }

        return Enumerable
            .Range(0, search.Generator.Count)
            .Select(i => search.Generator[i])
            .Select(column => (column, cost: ReducedCost(column)))
            .Where(x => x.cost <= slack)
            .OrderBy(x => x.cost)
            .Take(MostColumns)
            .Select(x => x.column);
    }

    /// <summary>What a plan asks of a person, compared in this order.</summary>
    internal readonly record struct Labor(int Settings, long Cuts, bool IsLeast) : IComparable<Labor>
    {
        /// <summary>Ruler settings, then strips and trims; sub-cuts are as many as pieces in every plan.</summary>
        public static Labor Of(StripGrid grid, ImmutableArray<CutStrips> strips)
        {
            var settings = strips.Select(s => s.Pattern.Height).Distinct().Count();
            var trims = strips.Sum(s => s.Times * Trims(grid, s.Pattern));
            return new(settings, strips.Sum(s => (long)s.Times) + trims, settings == 1 && trims == 0);
        }

        public static long Trims(StripGrid grid, StripPattern pattern) =>
            pattern.Cells.Where(cell => grid.Ways[cell.Way].Height < pattern.Height).Sum(cell => (long)cell.Times);

        public int CompareTo(Labor other) => (Settings, Cuts).CompareTo((other.Settings, other.Cuts));
    }
}
