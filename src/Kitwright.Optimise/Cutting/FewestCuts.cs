using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.LinearSolver;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>Strips with the fewest cuts within a length, over given columns: a set cover that counts cuts, by SCIP.</summary>
/// <param name="longest">The sum of heights, in units, that may be used.</param>
internal sealed class FewestCuts(StripGrid grid, ImmutableArray<Column> columns, long longest, WorkMeter meter)
{
    /// <summary>Beyond this a cut's weight would drown in the solver's tolerances.</summary>
    private const long MostWeight = 100_000;

    /// <summary>Among equal numbers of cuts the shorter strips: where cuts count before cloth.</summary>
    public bool ThenShortest { get; init; }

    public ImmutableArray<CutStrips> Improve(ImmutableArray<CutStrips> start)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var times = columns.Select(column => solver.MakeIntVar(0, column.EnoughTimes(grid.Counts.AsSpan()), "")).ToArray();
        using var objective = solver.Objective();
        objective.SetMinimization();
        var rows = grid.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity)).ToArray();
        using var length = solver.MakeConstraint(0, longest);
        var weight = ThenShortest ? Math.Min(MostWeight, CutStrips.TotalHeight(start) + 1) : 1;
        for (var c = 0; c < columns.Length; c++)
        {
            length.SetCoefficient(times[c], columns[c].Height);
            objective.SetCoefficient(times[c], (weight * Labor.CutsOf(grid, columns[c].Pattern)) + (ThenShortest ? columns[c].Height : 0));
            for (var i = 0; i < columns[c].Pieces.Length; i++)
            {
                rows[columns[c].Pieces[i]].SetCoefficient(times[c], columns[c].Copies[i]);
            }
        }

        var counts = start.GroupBy(s => Column.Of(grid, s.Pattern)).ToDictionary(s => s.Key, s => s.Sum(x => x.Times));
        solver.SetHint(times, [.. columns.Select(c => (double)counts.GetValueOrDefault(c))]);
        try
        {
            return Run(solver, times) is { } strips && IsBetter(strips, start) ? strips : start;
        }
        finally
        {
            foreach (var part in times.Cast<IDisposable>().Concat(rows))
            {
                part.Dispose();
            }
        }
    }

    private bool IsBetter(ImmutableArray<CutStrips> strips, ImmutableArray<CutStrips> start) =>
        CutStrips.TotalHeight(strips) <= longest
        && (Labor.CutsOf(grid, strips), CutStrips.TotalHeight(strips)).CompareTo((Labor.CutsOf(grid, start), CutStrips.TotalHeight(start))) < 0;

    private ImmutableArray<CutStrips>? Run(Solver solver, Variable[] times)
    {
        var nodes = ScipWork.MostNodes(meter, grid.Pieces.Length, columns.Length);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetSolverSpecificParametersAsString(string.Create(CultureInfo.InvariantCulture, $"{ScipWork.Settings}limits/totalnodes = {nodes}"));
        solver.SetTimeLimit((long)Math.Clamp(meter.UntilSafetyStop.TotalMilliseconds, 1, int.MaxValue));
        using var interrupt = meter.Cancellation.Register(() => solver.InterruptSolve());
        var status = solver.Solve(parameters);
        meter.Charge(ScipWork.Steps(solver.Nodes(), solver.Iterations(), grid.Pieces.Length, columns.Length));
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return null;
        }

        // Rounded and looked at again: the solver's tolerances decide nothing.
        ImmutableArray<CutStrips> strips =
        [
            .. columns.Zip(times, (column, time) => new CutStrips(column.Pattern, (int)Math.Round(time.SolutionValue()))).Where(s => s.Times > 0),
        ];
        var enough = Enumerable
            .Range(0, grid.Pieces.Length)
            .All(piece => strips.Sum(s => s.Times * Surplus.CopiesOf(grid, s.Pattern, piece)) >= grid.Counts[piece]);
        return enough ? Surplus.Remove(grid, strips) : null;
    }
}
