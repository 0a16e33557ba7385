using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.LinearSolver;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Whole numbers of given strips that cut at least what is wanted in the least length: the set-cover program over a
/// choice of columns, by SCIP.
/// </summary>
/// <remarks>
/// The limits are numbers of nodes, so that equal runs end equally; SCIP runs one thread with fixed seeds. Its relative
/// gap is set to 0: the default of the wrapper, 1e-4, would call a plan best that is not.
/// </remarks>
internal static class SetCover
{
    /// <param name="Strips">The best strips found, or null.</param>
    /// <param name="Exhausted">True where the search came to its end: nothing shorter exists over these columns.</param>
    internal sealed record Outcome(ImmutableArray<CutStrips>? Strips, bool Exhausted);

    /// <param name="start">A plan over these columns to begin with, no longer than <paramref name="atMost"/>; or null.</param>
    /// <param name="atLeast">No plan is shorter, in units.</param>
    /// <param name="atMost">Longer plans are not asked for.</param>
    /// <param name="limits">On the number of strips of each height.</param>
    public static Outcome Solve(
        StripGrid grid,
        IReadOnlyCollection<Column> columns,
        ImmutableArray<CutStrips>? start,
        long atLeast,
        long atMost,
        WorkMeter meter,
        CountLimits? limits = null
    )
    {
        using var solver = Solver.CreateSolver("SCIP");
        var rows = grid.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity)).ToArray();
        using var objective = solver.Objective();
        objective.SetMinimization();
        var variables = columns.Select(column => Add(solver, rows, objective, grid, column)).ToArray();
        using var length = solver.MakeConstraint(atLeast, atMost);
        foreach (var (column, variable) in columns.Zip(variables))
        {
            length.SetCoefficient(variable, column.Height);
        }

        var counts = limits is null ? [] : Counts(solver, grid, columns.Zip(variables), limits);
        if (start is { } hint)
        {
            Hint(solver, grid, columns, variables, hint);
        }

        try
        {
            return Run(solver, grid, columns, variables, atMost, meter);
        }
        finally
        {
            foreach (var variable in variables)
            {
                variable.Dispose();
            }

            foreach (var row in rows.Concat(counts))
            {
                row.Dispose();
            }
        }
    }

    /// <summary>So many strips of each height, where the case says more than what is so anyway.</summary>
    private static Constraint[] Counts(Solver solver, StripGrid grid, IEnumerable<(Column Column, Variable Variable)> columns, CountLimits limits)
    {
        var natural = CountLimits.Of(grid);
        var ofHeight = columns.ToLookup(pair => pair.Column.Height, pair => pair.Variable);
        var rows = new List<Constraint>();
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            if (limits.AtLeast[h] > 0 || limits.AtMost[h] < natural.AtMost[h])
            {
                var row = solver.MakeConstraint(limits.AtLeast[h], limits.AtMost[h]);
                foreach (var variable in ofHeight[grid.Heights[h]])
                {
                    row.SetCoefficient(variable, 1);
                }

                rows.Add(row);
            }
        }

        return [.. rows];
    }

    private static Variable Add(Solver solver, Constraint[] rows, Objective objective, StripGrid grid, Column column)
    {
        var variable = solver.MakeIntVar(0, column.EnoughTimes(grid.Counts.AsSpan()), "");
        objective.SetCoefficient(variable, column.Height);
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            rows[column.Pieces[i]].SetCoefficient(variable, column.Copies[i]);
        }

        return variable;
    }

    private static void Hint(Solver solver, StripGrid grid, IReadOnlyCollection<Column> columns, Variable[] variables, ImmutableArray<CutStrips> start)
    {
        var times = start.GroupBy(s => Column.Of(grid, s.Pattern)).ToDictionary(s => s.Key, s => s.Sum(x => x.Times));
        solver.SetHint(variables, [.. columns.Select(column => (double)times.GetValueOrDefault(column))]);
    }

    private static Outcome Run(
        Solver solver,
        StripGrid grid,
        IReadOnlyCollection<Column> columns,
        Variable[] variables,
        long atMost,
        WorkMeter meter
    )
    {
        var nodes = ScipWork.MostNodes(meter, grid.Pieces.Length, columns.Count);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetSolverSpecificParametersAsString(
            string.Create(CultureInfo.InvariantCulture, $"{ScipWork.Settings}limits/totalnodes = {nodes}")
        );
        solver.SetTimeLimit((long)Math.Clamp(meter.UntilSafetyStop.TotalMilliseconds, 1, int.MaxValue));
        using var interrupt = meter.Cancellation.Register(() => solver.InterruptSolve());
        var status = solver.Solve(parameters);
        meter.Charge(ScipWork.Steps(solver.Nodes(), solver.Iterations(), grid.Pieces.Length, columns.Count));
        var exhausted = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE;
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return new(null, exhausted);
        }

        // Rounded and looked at again: the solver's tolerances decide nothing.
        var strips = columns
            .Zip(variables, (column, variable) => new CutStrips(column.Pattern, (int)Math.Round(variable.SolutionValue())))
            .Where(s => s.Times > 0)
            .ToImmutableArray();
        var enough = Enumerable
            .Range(0, grid.Pieces.Length)
            .All(piece => strips.Sum(s => s.Times * Surplus.CopiesOf(grid, s.Pattern, piece)) >= grid.Counts[piece]);
        return enough && CutStrips.TotalHeight(strips) <= atMost
            ? new(Surplus.Remove(grid, strips), exhausted)
            : new(null, exhausted && enough);
    }
}
