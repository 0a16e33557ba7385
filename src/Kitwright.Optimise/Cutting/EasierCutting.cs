using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Of the plans that are equal in what counts first the one that is best in what counts then. As a rule cloth counts
/// first: among plans that take no more of it the one with the fewest ruler settings, then the fewest cuts, and no more
/// cuts than the handbook's way where that takes no more cloth either. Where settings or cuts count before cloth, plans
/// may be as long as they like.
/// </summary>
internal sealed class EasierCutting(StripGrid grid, StripSearch search, Aims aims, WorkMeter meter)
{
    private const int MostColumns = 400;

    /// <summary>Work that is always worth an easier plan; beyond, half of what the length has taken.</summary>
    private const long AlwaysWorth = 100_000_000;

    private readonly long longest = aims.ClothFirst ? aims.Longest(search.Best) : grid.Count * grid.Heights[^1];
    private readonly int highest = aims.ClothFirst ? search.Best.Max(s => s.Pattern.Height) : grid.Heights[^1];
    private long mostCuts = long.MaxValue;

    public ImmutableArray<CutStrips> Choose()
    {
        var handbook = HandbookWay.Strips(grid);
        if (aims.ClothFirst && Fits(handbook))
        {
            mostCuts = Labor.CutsOf(grid, handbook);
        }

        ImmutableArray<CutStrips>[] simple = [search.Best, FirstFit.Strips(grid), handbook];
        var best = simple.Where(Accepts).Min(aims);
        if (search.Linear is null || meter.MustStop || (aims.ClothFirst && grid.Fold == 1 && Labor.SettingsOf(grid, best).Count == 1))
        {
            return best;
        }

        using var share = meter.ShareOf(Math.Max(AlwaysWorth, meter.Done / 2));
        foreach (var aim in aims.Order.Where(aim => aim is CutAim.Settings or CutAim.Cuts))
        {
            var easier = aim == CutAim.Settings ? FewerSettings(best) : FewerCuts(best, simple);
            best = easier is { } strips && Accepts(strips) && aims.Compare(strips, best) < 0 ? strips : best;
        }

        return best;
    }

    private bool Fits(ImmutableArray<CutStrips> strips) =>
        CutStrips.TotalHeight(strips) <= longest
        && strips.Max(s => s.Pattern.Height) <= highest
        && (!aims.ClothFirst || aims.TakesNoMore(strips, search.Best));

    private bool Accepts(ImmutableArray<CutStrips> strips) => Fits(strips) && Labor.CutsOf(grid, strips) <= mostCuts;

    private ImmutableArray<CutStrips>? FewerSettings(ImmutableArray<CutStrips> best)
    {
        // Where cuts count before settings, fewer settings must not bring more.
        var most = aims.SettingsBeforeCuts ? mostCuts : Labor.CutsOf(grid, best);
        return new FewestSettings(grid, longest, highest, strips => Fits(strips) && Labor.CutsOf(grid, strips) <= most, meter)
        {
            Shortest = !aims.ClothFirst,
        }.Find(Labor.SettingsOf(grid, best));
    }

    private ImmutableArray<CutStrips>? FewerCuts(ImmutableArray<CutStrips> best, ImmutableArray<CutStrips>[] simple)
    {
        IReadOnlySet<int> settings = aims.SettingsBeforeCuts ? Labor.SettingsOf(grid, best) : grid.Heights.ToHashSet();
        if (meter.MustStop || GridOfHeights.Of(grid, settings) is not { } few)
        {
            return null;
        }

        var start = few.Here(best)!.Value;
        // Strips of one size alone are seldom maximal, so that no enumeration of maximal strips holds them.
        var simplest = simple.Where(Fits).Select(strips => few.Here(strips)).Append(start).SelectMany(strips => strips ?? []);
        var columns = simplest.Select(s => Column.Of(few.Grid, s.Pattern)).Union(Columns(few.Grid)).ToImmutableArray();
        return meter.Left < ScipWork.OfRoot(columns.Length)
            ? null
            : few.InWhole(new FewestCuts(few.Grid, columns, longest, meter) { ThenShortest = !aims.ClothFirst }.Improve(start));
    }

    /// <summary>The columns that such a plan can use: all, or those nearest to being worth their height.</summary>
    private IEnumerable<Column> Columns(StripGrid few)
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
}
