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
    private const int MostColumns = 400;

    /// <summary>Work that is always worth an easier plan; beyond, half of what the length has taken.</summary>
    private const long AlwaysWorth = 100_000_000;

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
        if (search.Linear is null || Labor.Of(grid, best).IsLeast || meter.MustStop)
        {
            return best;
        }

        using var share = meter.ShareOf(Math.Max(AlwaysWorth, meter.Done / 2));
        bool Accepts(ImmutableArray<CutStrips> strips) => Fits(strips) && Labor.Of(grid, strips).Cuts <= mostCuts;
        var settings = Labor.SettingsOf(grid, best);
        if (new FewestSettings(grid, longest, highest, Accepts, meter).Find(settings) is { } fewer)
        {
            best = fewer;
            settings = Labor.SettingsOf(grid, best);
        }

        if (meter.MustStop || GridOfHeights.Of(grid, settings) is not { } few)
        {
            return best;
        }

        var start = few.Here(best)!.Value;
        // Strips of one size alone are seldom maximal, so that no enumeration of maximal strips holds them.
        var simplest = simple.Where(Fits).Select(strips => few.Here(strips)).Append(start).SelectMany(strips => strips ?? []);
        var columns = simplest.Select(s => Column.Of(few.Grid, s.Pattern)).Union(Columns(few.Grid, longest, highest)).ToImmutableArray();
        if (meter.Left < SetCover.StepsOfRoot(columns.Length))
        {
            return best;
        }

        var easiest = few.InWhole(new FewestCuts(few.Grid, columns, longest, meter).Improve(start));
        return Accepts(easiest) && Labor.Of(grid, easiest).CompareTo(Labor.Of(grid, best)) < 0 ? easiest : best;
    }

    /// <summary>The columns that such a plan can use: all, or those nearest to being worth their height.</summary>
    private IEnumerable<Column> Columns(StripGrid few, long longest, int highest)
    {
        var generator = new ColumnGenerator(few, meter);
        generator.Solve(few.Counts.AsSpan(), long.MaxValue);
        if (!generator.Priced)
        {
            return [];
        }

        var enumeration = new ReducedCostEnumeration(few, generator.FeasibleDuals(), generator.Scale, meter);
        var found = enumeration.Columns(generator.LowerBound(few.Counts.AsSpan()), longest, MostColumns);
        return (found?.Columns ?? []).Where(column => column.Height <= highest);
    }

    /// <summary>What a plan asks of a person, compared in this order.</summary>
    internal readonly record struct Labor(int Settings, long Cuts, bool IsLeast) : IComparable<Labor>
    {
        /// <summary>
        /// Ruler settings along the cloth, of strips and of what is trimmed from them; then strips, sub-cuts and trims.
        /// </summary>
        public static Labor Of(StripGrid grid, ImmutableArray<CutStrips> strips)
        {
            var settings = SettingsOf(grid, strips).Count;
            var cuts = strips.Sum(s => s.Times * CutsOf(grid, s.Pattern));
            var fewest = strips.Sum(s => (long)s.Times) + grid.Count;
            return new(settings, cuts, settings == 1 && cuts == fewest);
        }

        public static HashSet<int> SettingsOf(StripGrid grid, ImmutableArray<CutStrips> strips) =>
            [.. strips.SelectMany(s => SettingsOf(grid, s.Pattern))];

        /// <summary>The strip's own height, and each height to which pieces are trimmed.</summary>
        public static IEnumerable<int> SettingsOf(StripGrid grid, StripPattern pattern) =>
            pattern.Cells.Select(cell => grid.Ways[cell.Way].Height).Append(pattern.Height).Distinct();

        /// <summary>The strip itself, its sub-cuts and its trims.</summary>
        public static long CutsOf(StripGrid grid, StripPattern pattern) =>
            1 + pattern.Cells.Sum(cell => cell.Times * (grid.Ways[cell.Way].Height < pattern.Height ? 2L : 1L));

        public int CompareTo(Labor other) => (Settings, Cuts).CompareTo((other.Settings, other.Cuts));
    }
}
