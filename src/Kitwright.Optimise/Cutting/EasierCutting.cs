using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Among plans that take no more cloth (or, by the step, no longer purchase) the one that is easiest for a person:
/// fewest ruler settings first, then fewest cuts, and no more cuts than the handbook's way where that takes no more
/// cloth either.
/// </summary>
/// <param name="purchase">Null where every inch counts and the length must stay.</param>
internal sealed class EasierCutting(StripGrid grid, StripSearch search, PurchaseSteps? purchase, WorkMeter meter)
{
    private const int MostColumns = 1000;

    public ImmutableArray<CutStrips> Choose()
    {
        var longest = purchase?.LongestInStep(search.Best) ?? search.Length;
        var highest = search.Best.Max(s => s.Pattern.Height);
        bool Fits(ImmutableArray<CutStrips> strips) =>
            CutStrips.TotalHeight(strips) <= longest && strips.Max(s => s.Pattern.Height) <= highest;

        var handbook = HandbookWay.Strips(grid);
        var mostCuts = Fits(handbook) ? Labor.Of(grid, handbook).Cuts : long.MaxValue;
        ImmutableArray<CutStrips>[] simple = [search.Best, FirstFit.Strips(grid), handbook];
        var best = simple
            .Where(strips => Fits(strips) && Labor.Of(grid, strips).Cuts <= mostCuts)
            .MinBy(strips => Labor.Of(grid, strips));
        if (search.FeasibleDuals is not { } duals || Labor.Of(grid, best).IsLeast || meter.MustStop)
        {
            return best;
        }

        // Strips of one size alone are seldom maximal, so that no enumeration of maximal strips holds them.
        var simplest = simple.Where(Fits).SelectMany(strips => strips).Select(s => Column.Of(grid, s.Pattern));
        var columns = simplest.Union(Columns(duals, longest, highest)).ToImmutableArray();
        return new FewestSettings(grid, columns, longest, mostCuts, meter).Improve(best);
    }

    /// <summary>All columns that such a plan can use, or the most promising of those seen where they are too many.</summary>
    private IEnumerable<Column> Columns(ImmutableArray<long> duals, long longest, int highest)
    {
        var enumeration = new ReducedCostEnumeration(grid, duals, search.Generator.Scale, meter);
        var all = enumeration.Columns(longest, longest, MostColumns)?.Columns;
        return (all ?? Seen(duals, longest)).Where(column => column.Height <= highest);
    }

    private IEnumerable<Column> Seen(ImmutableArray<long> duals, long longest)
    {
        var slack = (Int128)longest * search.Generator.Scale;
        for (var piece = 0; piece < duals.Length; piece++)
        {
            slack -= (Int128)duals[piece] * grid.Counts[piece];
        }

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
        /// <summary>
        /// Ruler settings along the cloth, of strips and of what is trimmed from them; then strips, sub-cuts and trims.
        /// </summary>
        public static Labor Of(StripGrid grid, ImmutableArray<CutStrips> strips)
        {
            var settings = strips.SelectMany(s => SettingsOf(grid, s.Pattern)).Distinct().Count();
            var cuts = strips.Sum(s => s.Times * CutsOf(grid, s.Pattern));
            var fewest = strips.Sum(s => (long)s.Times) + grid.Count;
            return new(settings, cuts, settings == 1 && cuts == fewest);
        }

        /// <summary>The strip's own height, and each height to which pieces are trimmed.</summary>
        public static IEnumerable<int> SettingsOf(StripGrid grid, StripPattern pattern) =>
            pattern.Cells.Select(cell => grid.Ways[cell.Way].Height).Append(pattern.Height).Distinct();

        /// <summary>The strip itself, its sub-cuts and its trims.</summary>
        public static long CutsOf(StripGrid grid, StripPattern pattern) =>
            1 + pattern.Cells.Sum(cell => cell.Times * (grid.Ways[cell.Way].Height < pattern.Height ? 2L : 1L));

        public int CompareTo(Labor other) => (Settings, Cuts).CompareTo((other.Settings, other.Cuts));
    }
}
