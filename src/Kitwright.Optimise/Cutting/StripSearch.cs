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

    private const int MostInCase = 2000;

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
        using var branching = new BranchOnCounts(grid, sums, meter);
        Branch(branching, dive, 0.02);
        if (Done || meter.MustStop)
        {
            return;
        }

        var recreate = new RuinAndRecreate(grid, generator, dive, meter);
        var enumeration = new ReducedCostEnumeration(grid, duals, generator.Scale, meter);
        CloseByGroup(enumeration, linear);
        Recreate(recreate, duals, 0.01);
        Branch(branching, dive, 0.06);
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

        Branch(branching, dive, 0.15);
        CloseCases(branching, 0.3);
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

    /// <summary>Raises the bound by cases, and dives from what their linear programs take whole.</summary>
    private void Branch(BranchOnCounts branching, DivingHeuristic dive, double share)
    {
        if (Done || meter.MustStop)
        {
            return;
        }

        using (meter.Share(share))
        {
            branching.Run(() => Aim, relaxation => Take(dive, relaxation), meter);
        }

        if (branching.Proof is { } proof && proof.Length > Bound.Length)
        {
            Bound = proof;
            Look();
        }
    }

    /// <summary>Takes what a linear program cuts whole, with a dive for the rest, where that is shorter.</summary>
    private void Take(DivingHeuristic dive, CountedRelaxation relaxation)
    {
        var left = grid.Counts.ToArray();
        var whole = relaxation.Whole(left);
        if (dive.Search(left, Length - CutStrips.TotalHeight(whole), discrepancies: 0, depth: 0) is { } rest)
        {
            Take(Surplus.Remove(grid, [.. whole, .. rest]));
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
    /// <returns>False where the search was begun and did not come to its end, so that a larger one will not.</returns>
    private bool Close(ReducedCostEnumeration enumeration, long from, int mostColumns, double share)
    {
        if (Done || meter.MustStop)
        {
            return false;
        }

        using (meter.Share(share))
        {
            if (enumeration.Columns(from, Aim, mostColumns) is not var (columns, target))
            {
                return true;
            }

            if (meter.Left < ScipWork.OfRoot(columns.Count))
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

    /// <summary>As <see cref="Close"/>, case by case: each has few columns, and says how many strips of each height there are.</summary>
    private void CloseCases(BranchOnCounts branching, double share)
    {
        if (Done || meter.MustStop)
        {
            return;
        }

        using (meter.Share(share))
        {
            var enumeration = new ReducedCostEnumeration(grid, Linear!.Duals, generator.Scale, meter);
            while (!Done && !meter.MustStop && CloseCases(branching, enumeration, BestBound))
            {
                Look();
            }
        }
    }

    /// <returns>True where the bound is above the target now.</returns>
    private bool CloseCases(BranchOnCounts branching, ReducedCostEnumeration enumeration, long target)
    {
        var exhausted = true;
        foreach (var limited in branching.Cases(target))
        {
            enumeration.Value(limited.Duals, limited.HeightDuals, limited.Worth(grid));
            if (enumeration.Columns(target, target, MostInCase) is not var (columns, _) || meter.Left < ScipWork.OfRoot(columns.Count))
            {
                return false;
            }

            // One case that takes long must not keep the others from being looked at: a plan may be found in them.
            using var part = meter.Share(0.02);
            var outcome = SetCover.Solve(grid, columns, start: null, BestBound, target, meter, limited.Limits);
            exhausted &= outcome.Exhausted;
            if (outcome.Strips is { } strips)
            {
                Take(strips);
                return false;
            }
        }

        Searched = exhausted ? Math.Max(Searched, Math.Min(Length, sums.RoundUp(target + 1))) : Searched;
        return exhausted;
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
