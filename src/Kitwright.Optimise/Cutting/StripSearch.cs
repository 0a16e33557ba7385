using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The shortest strips for a grid within a budget of work: column generation for the bound, dives for good strips,
/// ruin and recreate for better ones, and set cover over enumerated columns to close what is left.
/// </summary>
internal sealed class StripSearch
{
    /// <summary>With more kinds of pieces the set cover over few columns finds nothing that dives do not.</summary>
    private const int MostPiecesToShorten = 25;

    private const int MostInGroup = 3000;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly Func<long, long> aim;
    private readonly Action<long, long> report;
    private readonly ColumnGenerator generator;
    private readonly SumsOfHeights sums;

    /// <param name="aim">For a length, the greatest one that would be better; in units.</param>
    /// <param name="report">Told of every better length or bound, in units.</param>
    public StripSearch(
        StripGrid grid,
        ImmutableArray<CutStrips> start,
        WorkMeter meter,
        Func<long, long> aim,
        Action<long, long> report
    )
    {
        this.grid = grid;
        this.meter = meter;
        this.report = report;
        this.aim = aim;
        generator = new(grid, meter);
        sums = new(grid.Heights);
        Best = start;
        Length = CutStrips.TotalHeight(start);
        Aim = aim(Length);
        Bound = StripBound.ByArea(grid, sums);
        Look();
    }

    public ImmutableArray<CutStrips> Best { get; private set; }

    public StripBound Bound { get; private set; }

    /// <summary>No plan is shorter, by the word of an exhausted search; 0 where none was.</summary>
    public long Searched { get; private set; }

    /// <summary>Null before the linear program is solved.</summary>
    public LinearSolution? Linear { get; private set; }

    public long Length { get; private set; }

    /// <summary>The greatest length that would be better: below the present one, or in a lower step of purchase.</summary>
    public long Aim { get; private set; }

    public long BestBound => Math.Max(Bound.Length, Searched);

    public ColumnGenerator Generator => generator;

    public bool Done { get; private set; }

    public void Run()
    {
        SolveLinearProgram();
        if (Linear is not { } linear)
        {
            return;
        }

        var dive = new DivingHeuristic(generator, grid.Pieces.Length, meter);
        if (!Done && dive.Search(grid.Counts.AsSpan(), Length, discrepancies: 0, depth: 0) is { } strips)
        {
            Take(Surplus.Remove(grid, strips));
        }

        if (Done || meter.MustStop)
        {
            return;
        }

        var duals = linear.Duals;
        var recreate = new RuinAndRecreate(grid, generator, dive, meter);
        var enumeration = new ReducedCostEnumeration(grid, duals, generator.Scale, meter);
        CloseByGroup(enumeration, linear);
        Recreate(recreate, duals, 0.01);
        if (!Done && !meter.MustStop)
        {
            Close(enumeration, Aim, mostColumns: 300, 0.5);
            Recreate(recreate, duals, 0.05);
            Shorten(enumeration);
            Recreate(recreate, duals, 0.05);
            foreach (var (mostColumns, share) in new[] { (150, 0.05), (800, 0.15), (2000, 0.25), (5000, 0.3), (12_000, 1) })
            {
                if (!Close(enumeration, BestBound, mostColumns, share))
                {
                    break;
                }

                Recreate(recreate, duals, 0.03);
            }
        }

        Recreate(recreate, duals, 1);
    }

    private void SolveLinearProgram()
    {
        generator.Solve(grid.Counts.AsSpan(), long.MaxValue);
        if (generator.Priced)
        {
            Bound = StripBound.Greater(Bound, generator.Bound());
            Linear = generator.Solution();
            Look();
        }
    }

    private void Recreate(RuinAndRecreate recreate, ImmutableArray<long> duals, double share)
    {
        using (meter.Share(share))
        {
            recreate.Improve(Best, duals, () => Done, () => Length - BestBound, Take);
        }
    }

    private void Take(ImmutableArray<CutStrips> strips)
    {
        if (CutStrips.TotalHeight(strips) < Length)
        {
            Best = strips;
            Length = CutStrips.TotalHeight(strips);
            Aim = aim(Length);
            Look();
        }
    }

    private void Look()
    {
        Done = BestBound > Aim;
        report(Length, BestBound);
    }

    /// <summary>
    /// Every plan no longer than a target uses only columns whose reduced cost is within the target less the value of
    /// the demand. The set cover over them finds the best such plan, or shows that there is none.
    /// </summary>
    /// <param name="from">The lowest target worth trying; the highest is just below the present length.</param>
    /// <returns>False where the search did not come to its end, so that a larger one will not.</returns>
    private bool Close(ReducedCostEnumeration enumeration, long from, int mostColumns, double share)
    {
        if (Done || meter.MustStop)
        {
            return false;
        }

        using (meter.Share(share))
        {
            if (enumeration.Columns(from, Aim, mostColumns) is not var (columns, target) || meter.Left < ScipWork.OfRoot(columns.Count))
            {
                return false;
            }

            var present = Best.Select(strips => Column.Of(grid, strips.Pattern));
            var outcome =
                target == Length - 1
                    ? SetCover.Solve(grid, [.. columns.Union(present)], Best, BestBound, Length, meter)
                    : SetCover.Solve(grid, columns, start: null, BestBound, target, meter);
            if (outcome.Strips is { } strips)
            {
                Take(strips);
            }

            if (outcome.Exhausted)
            {
                Searched = Math.Max(Searched, Math.Min(Length, sums.RoundUp(target + 1)));
                Look();
            }

            return outcome.Exhausted;
        }
    }

    /// <summary>Few kinds of pieces in any number: their group is small.</summary>
    private void CloseByGroup(ReducedCostEnumeration enumeration, LinearSolution linear)
    {
        using (meter.Share(0.15))
        {
            if (GroupRelaxation.GroupOf(linear) is not { } group || enumeration.Columns(BestBound, Aim, MostInGroup) is not var (columns, target))
            {
                return;
            }

            if (GroupRelaxation.Of(grid, linear, group, columns, meter) is not { } relaxation)
            {
                return;
            }

            var (strips, searched) = relaxation.Search(BestBound, target, sums);
            if (strips is { } shorter)
            {
                Take(shorter);
            }

            Searched = Math.Max(Searched, Math.Min(Length, searched));
            Look();
        }
    }

    /// <summary>A shorter plan over the most promising columns and those of the present plan; proves nothing.</summary>
    private void Shorten(ReducedCostEnumeration enumeration)
    {
        if (Done || meter.MustStop || grid.Pieces.Length > MostPiecesToShorten)
        {
            return;
        }

        using (meter.Share(0.05))
        {
            if (enumeration.Columns(BestBound, Aim, mostColumns: 150) is var (columns, _))
            {
                var present = Best.Select(strips => Column.Of(grid, strips.Pattern));
                var outcome = SetCover.Solve(grid, [.. columns.Union(present)], Best, BestBound, Length, meter);
                if (outcome.Strips is { } strips)
                {
                    Take(strips);
                }
            }
        }
    }
}
