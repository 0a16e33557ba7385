using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The shortest strips for a grid within a budget of work: column generation for the bound, dives for good strips,
/// ruin and recreate for better ones, and set cover over enumerated columns to close what is left.
/// </summary>
internal sealed class StripSearch
{
    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly Func<ImmutableArray<CutStrips>, long, bool> goodEnough;
    private readonly Action<long, long> report;
    private readonly ColumnGenerator generator;
    private readonly SumsOfHeights sums;

    /// <param name="goodEnough">Whether a bound makes the strips found so far the best that is asked for.</param>
    /// <param name="report">Told of every better length or bound, in units.</param>
    public StripSearch(
        StripGrid grid,
        ImmutableArray<CutStrips> start,
        WorkMeter meter,
        Func<ImmutableArray<CutStrips>, long, bool> goodEnough,
        Action<long, long> report
    )
    {
        this.grid = grid;
        this.meter = meter;
        this.report = report;
        this.goodEnough = goodEnough;
        generator = new(grid, meter);
        sums = new(grid.Heights);
        Best = start;
        Length = CutStrips.TotalHeight(start);
        Bound = StripBound.ByArea(grid, sums);
        Look();
    }

    public ImmutableArray<CutStrips> Best { get; private set; }

    public StripBound Bound { get; private set; }

    /// <summary>No plan is shorter, by the word of an exhausted search; 0 where none was.</summary>
    public long Searched { get; private set; }

    /// <summary>Duals under which no strip is worth more than its height; null before the linear program is solved.</summary>
    public ImmutableArray<long>? FeasibleDuals { get; private set; }

    public long Length { get; private set; }

    public long BestBound => Math.Max(Bound.Length, Searched);

    public ColumnGenerator Generator => generator;

    public bool Done { get; private set; }

    public void Run()
    {
        SolveLinearProgram();
        if (FeasibleDuals is not { } duals)
        {
            return;
        }

        var worth = Int128.Zero;
        for (var piece = 0; piece < duals.Length; piece++)
        {
            worth += (Int128)duals[piece] * grid.Counts[piece];
        }

        var dive = new DivingHeuristic(generator, meter);
        foreach (var (discrepancies, depth) in new[] { (0, 0), (1, 2), (2, 3) })
        {
            using (meter.Share(0.1))
            {
                if (!Done && dive.Search(grid.Counts, Length, discrepancies, depth) is { } strips)
                {
                    Take(Surplus.Remove(grid, strips));
                }
            }
        }

        var enumeration = new ReducedCostEnumeration(grid, duals, generator.Scale, meter);
        Close(enumeration, worth, mostColumns: 300, onlyWhole: true);
        var recreate = new RuinAndRecreate(grid, generator, dive, meter);
        Recreate(recreate, duals, 0.1);
        foreach (var mostColumns in new[] { 150, 1500, 4000 })
        {
            Close(enumeration, worth, mostColumns, onlyWhole: false);
        }

        Recreate(recreate, duals, 1);
    }

    private void SolveLinearProgram()
    {
        generator.Solve(grid.Counts, long.MaxValue);
        if (generator.Priced)
        {
            Bound = StripBound.Greater(Bound, generator.Bound());
            FeasibleDuals = generator.FeasibleDuals();
            Look();
        }
    }

    private void Recreate(RuinAndRecreate recreate, ImmutableArray<long> duals, double share)
    {
        using (meter.Share(share))
        {
            recreate.Improve(Best, duals, () => Done, Take);
        }
    }

    private void Take(ImmutableArray<CutStrips> strips)
    {
        if (CutStrips.TotalHeight(strips) < Length)
        {
            Best = strips;
            Length = CutStrips.TotalHeight(strips);
            Look();
        }
    }

    private void Look()
    {
        Done = BestBound >= Length || goodEnough(Best, BestBound);
        report(Length, BestBound);
    }

    /// <summary>
    /// Every plan no longer than a target uses only columns whose reduced cost is within the target less the value of
    /// the demand. The set cover over them finds the best such plan, or shows that there is none.
    /// </summary>
    /// <param name="onlyWhole">Whether to leave it where the columns for every shorter plan are too many.</param>
    private void Close(ReducedCostEnumeration enumeration, Int128 worth, int mostColumns, bool onlyWhole)
    {
        if (Done || meter.MustStop || HighestTarget(enumeration, worth, mostColumns, onlyWhole) is not ({ } columns, var target))
        {
            return;
        }

        var start = Best.Select(strips => Column.Of(grid, strips.Pattern));
        var outcome = SetCover.Solve(grid, [.. columns.Union(start)], Best, BestBound, meter);
        if (outcome.Strips is { } strips)
        {
            Take(strips);
        }

        if (outcome.Exhausted)
        {
            Searched = Math.Max(Searched, Math.Min(Length, sums.RoundUp(target + 1)));
            Look();
        }
    }

    /// <summary>The highest target below the present length with no more columns than asked, and the columns.</summary>
    private (IReadOnlyCollection<Column> Columns, long Target)? HighestTarget(
        ReducedCostEnumeration enumeration,
        Int128 worth,
        int mostColumns,
        bool onlyWhole
    )
    {
        (IReadOnlyCollection<Column>, long)? best = null;
        var (low, high) = (BestBound, Length - 1);
        // The highest target first: it is the one that proves the plan best.
        for (var target = high; low <= high; target = (low + high) / 2)
        {
            var columns = enumeration.Columns((long)(((Int128)target * generator.Scale) - worth), mostColumns);
            if (columns is not null)
            {
                best = ([.. columns], target);
                low = target + 1;
            }
            else if (onlyWhole || meter.MustStop)
            {
                return null;
            }
            else
            {
                high = target - 1;
            }
        }

        return best;
    }
}
