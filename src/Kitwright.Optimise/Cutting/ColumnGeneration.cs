using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// A cutting plan by column generation over strips, never longer than first fit's, with a bound that anybody can
/// recompute.
/// </summary>
public static class ColumnGeneration
{
    private const string Method = "column-generation";

    /// <summary>Table cells of one pricing: beyond, one round would take seconds and first fit has to do.</summary>
    private const long MostCells = 1L << 28;

    /// <summary>
    /// Plans under a limit of work. Always answers with a plan where anything can be cut: at a cancel or a limit the
    /// best so far, with its gap.
    /// </summary>
    public static Checked<ClothPlan> Plan(
        ClothProblem problem,
        WorkBudget budget,
        CancellationToken cancellation = default,
        IProgress<CutProgress>? progress = null
    )
    {
        var intake = ClothIntake.Of(problem);
        if (intake.Grid is not { } grid)
        {
            return new(null, intake.Findings);
        }

        if (grid.Pieces.IsEmpty || grid.Pieces.Length > 1000 || StripKnapsack.CellsOf(grid) > MostCells)
        {
            return FirstFit.Plan(problem);
        }

        problem = intake.Problem;
        var meter = new WorkMeter(budget, cancellation);
        var aims = new Aims(problem, grid);
        var search = new StripSearch(
            grid,
            FirstFit.Strips(grid),
            meter,
            aims.Better,
            (length, bound) => progress?.Report(new(grid.Unit * (Rational)length, grid.Unit * (Rational)bound))
        );
        search.Run();
        var stoppedBy = search.Done ? "done" : meter.StoppedBy;
        var strips = new EasierCutting(grid, search, aims, meter).Choose();
        var plan = TableOrder.Write(problem, grid, strips, search.Bound, Method, meter.Done, stoppedBy, search.Searched);
        return new(plan, intake.Findings);
    }
}
