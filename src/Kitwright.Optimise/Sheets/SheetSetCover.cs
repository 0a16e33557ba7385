using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.LinearSolver;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// Whole numbers of given patterns that cut everything for the least cost: the set-cover program over a choice of
/// columns, by SCIP with a limit of nodes and a relative gap of 0.
/// </summary>
internal static class SheetSetCover
{
    /// <summary>The best choice found that is better than <paramref name="start"/>, or null.</summary>
    public static SheetSolution? Solve(SheetGrid grid, IReadOnlyList<SheetColumn> columns, SheetSolution start, long atLeast, long mostNodes, WorkMeter meter)
    {
        using var solver = Solver.CreateSolver("SCIP");
        using var objective = solver.Objective();
        objective.SetMinimization();
        var demand = grid.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity)).ToArray();
        var supply = grid.Sheets.Select(sheet => sheet.Count is { } count ? solver.MakeConstraint(double.NegativeInfinity, count) : null).ToArray();
        using var bounds = solver.MakeConstraint(atLeast, start.Worth);
        var variables = new List<Variable>();
        for (var i = 0; i < demand.Length; i++)
        {
            var variable = solver.MakeIntVar(0, grid.Counts[i], "");
            demand[i].SetCoefficient(variable, 1);
            objective.SetCoefficient(variable, grid.PenaltyOf(i));
            bounds.SetCoefficient(variable, grid.PenaltyOf(i));
            variables.Add(variable);
        }

        foreach (var column in columns)
        {
            var variable = solver.MakeIntVar(0, Most(grid, column), "");
            objective.SetCoefficient(variable, column.Cost);
            bounds.SetCoefficient(variable, column.Cost);
            supply[column.Sheet]?.SetCoefficient(variable, 1);
            for (var i = 0; i < column.Pieces.Length; i++)
            {
                demand[column.Pieces[i]].SetCoefficient(variable, column.Copies[i]);
            }

            variables.Add(variable);
        }

        try
        {
            return Run(solver, grid, columns, variables, start, mostNodes, meter);
        }
        finally
        {
            variables.ForEach(variable => variable.Dispose());
            foreach (var row in demand.Concat(supply.OfType<Constraint>()))
            {
                row.Dispose();
            }
        }
    }

    private static int Most(SheetGrid grid, SheetColumn column)
    {
        var most = 0;
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            most = Math.Max(most, (grid.Counts[column.Pieces[i]] + column.Copies[i] - 1) / column.Copies[i]);
        }

        return Math.Min(most, grid.Sheets[column.Sheet].Count ?? most);
    }

    private static SheetSolution? Run(
        Solver solver,
        SheetGrid grid,
        IReadOnlyList<SheetColumn> columns,
        List<Variable> variables,
        SheetSolution start,
        long mostNodes,
        WorkMeter meter
    )
    {
        var (rows, width) = (grid.Pieces.Length + grid.Sheets.Length, columns.Count + grid.Pieces.Length);
        var nodes = Math.Min(mostNodes, ScipWork.MostNodes(meter, rows, width));
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetSolverSpecificParametersAsString(string.Create(CultureInfo.InvariantCulture, $"{ScipWork.Settings}limits/totalnodes = {nodes}"));
        solver.SetTimeLimit((long)Math.Clamp(meter.UntilSafetyStop.TotalMilliseconds, 1, int.MaxValue));
        using var interrupt = meter.Cancellation.Register(() => solver.InterruptSolve());
        var status = solver.Solve(parameters);
        meter.Charge(ScipWork.Steps(solver.Nodes(), solver.Iterations(), rows, width));
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return null;
        }

        // Rounded and looked at again: the solver's tolerances decide nothing.
        var chosen = columns
            .Select((column, i) => new CutSheets(column.Pattern, (int)Math.Round(variables[grid.Pieces.Length + i].SolutionValue())))
            .Where(sheet => sheet.Times > 0)
            .ToList();
        for (var s = 0; s < grid.Sheets.Length; s++)
        {
            if (grid.Sheets[s].Count is { } count && chosen.Where(sheet => sheet.Pattern.Sheet == s).Sum(sheet => sheet.Times) > count)
            {
                return null;
            }
        }

        var solution = SheetSolution.Of(grid, chosen);
        return solution.Worth < start.Worth ? solution : null;
    }
}
