using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>The front door of cutting from sheets of cloth, and from a roll in three stages or in layers.</summary>
public static class SheetCutter
{
    /// <summary>Table cells of one pricing of all plates: beyond, one round would take seconds and first fit has to do.</summary>
    private const long MostCells = 1L << 31;

    private const int MostPieces = 1000;

    /// <summary>
    /// The best plan within the budget. Always answers where anything can be cut: at a cancel or a limit the best so
    /// far, and first fit's where the optimizer fails in the machine. Null only where nothing can be cut at all.
    /// </summary>
    /// <param name="seed">Equal seeds, problems and limits of work give equal plans.</param>
    public static Checked<SheetPlan> Cut(SheetProblem problem, WorkBudget budget, int seed = 0, CancellationToken cancellation = default)
    {
        var intake = SheetIntake.Of(problem);
        if (intake.Grid is not { } grid)
        {
            return new(null, intake.Findings);
        }

        if (problem.Goal == SheetGoal.FewestSheets && !grid.IsOpen)
        {
            grid = Counted(grid);
        }

        var meter = new WorkMeter(budget, cancellation);
        if (grid.Pieces.Length > MostPieces || Plate.All(grid).Sum(plate => StripTable.Of(grid.Terms, plate, meter).Cells) > MostCells)
        {
            return new(Simple(problem, grid), intake.Findings);
        }

        try
        {
            using var search = new SheetSearch(grid, meter, seed, (best, bound) => IsFewest(problem, grid, best, bound));
            search.Run();
            var plan = SheetWriter.Write(
                problem,
                grid,
                search.Best.Sheets,
                BoundOf(problem, grid, search.Bound),
                search.EnoughExcluded,
                search.Scale,
                search.ProofDuals,
                "column-generation",
                meter.Done,
                search.Done ? "done" : meter.StoppedBy
            );
            return new(plan, intake.Findings);
        }
        catch (Exception fault) when (fault is DllNotFoundException or TypeInitializationException or OutOfMemoryException)
        {
            // The solver's native library is missing or the machine is full: a simple plan is better than none.
            return new(Simple(problem, grid), intake.Findings);
        }
    }

    /// <summary>First fit's plan; null where nothing can be cut.</summary>
    public static SheetPlan? FirstFit(SheetProblem problem) =>
        SheetIntake.Of(problem).Grid is not { } grid ? null
        : problem.Goal == SheetGoal.FewestSheets && !grid.IsOpen ? Simple(problem, Counted(grid))
        : Simple(problem, grid);

    private static SheetPlan Simple(SheetProblem problem, SheetGrid grid) =>
        SheetWriter.Write(
            problem,
            grid,
            SheetSolution.Of(grid, FirstFitSheets.Plan(grid)).Sheets,
            BoundOf(problem, grid, SheetAreaBound.Of(grid)),
            enoughExcluded: grid.Sheets.All(s => s.Count is not null) && SheetAreaBound.Of(grid) > grid.Sheets.Sum(s => s.Cost * s.Count!.Value),
            scale: 1,
            duals: [],
            "first-fit-decreasing",
            work: 0,
            "done"
        );

    private static bool IsFewest(SheetProblem problem, SheetGrid grid, SheetSolution best, long bound) =>
        problem.Goal == SheetGoal.FewestSheets && !grid.IsOpen && BoundOf(problem, grid, bound) >= best.Sheets.Sum(sheet => sheet.Times);

    private static Rational BoundOf(SheetProblem problem, SheetGrid grid, long bound)
    {
        var dearest = grid.Sheets.Max(sheet => sheet.Cost);
        return problem.Goal == SheetGoal.FewestSheets && !grid.IsOpen ? (bound + dearest - 1) / dearest : grid.CostUnit * bound;
    }

    /// <summary>Every sheet costs more than all areas together, and its area: the fewest first, then the least area.</summary>
    private static SheetGrid Counted(SheetGrid grid)
    {
        var all = grid.Sheets.Sum(sheet => sheet.Area * Math.Min(sheet.Count ?? 1000, 1000));
        return grid with { Sheets = [.. grid.Sheets.Select(sheet => sheet with { Cost = all + sheet.Area })], CostUnit = 1 };
    }
}
