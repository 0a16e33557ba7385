using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.LinearSolver;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Strips with the fewest ruler settings, and with those the fewest cuts, within a length: the set cover once more,
/// with one yes-or-no variable a setting. Two programs one after the other, by SCIP.
/// </summary>
/// <param name="longest">The sum of heights, in units, that may be used.</param>
/// <param name="mostCuts">How many cuts there may be, whatever the settings.</param>
internal sealed class FewestSettings(
    StripGrid grid,
    ImmutableArray<Column> columns,
    long longest,
    long mostCuts,
    WorkMeter meter
)
{
    public ImmutableArray<CutStrips> Improve(ImmutableArray<CutStrips> strips)
    {
        var fewest = Solve(strips, settings: null) ?? strips;
        var settings = EasierCutting.Labor.Of(grid, fewest).Settings;
        return meter.MustStop ? fewest : Solve(fewest, settings) ?? fewest;
    }

    /// <param name="settings">Null to make the settings fewest; otherwise how many there may be while cuts are fewest.</param>
    private ImmutableArray<CutStrips>? Solve(ImmutableArray<CutStrips> start, int? settings)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var heights = grid.Heights;
        var most = columns.Select(column => MostTimes(column)).ToArray();
        var times = most.Select(count => solver.MakeIntVar(0, count, "")).ToArray();
        var used = heights.Select(_ => solver.MakeBoolVar("")).ToArray();
        using var objective = solver.Objective();
        objective.SetMinimization();
        for (var piece = 0; piece < grid.Pieces.Length; piece++)
        {
            var row = solver.MakeConstraint(grid.Counts[piece], double.PositiveInfinity);
            for (var c = 0; c < columns.Length; c++)
            {
                if (columns[c].Pieces.IndexOf(piece) is var at and >= 0)
                {
                    row.SetCoefficient(times[c], columns[c].Copies[at]);
                }
            }
        }

        var length = solver.MakeConstraint(0, longest);
        var passes = solver.MakeConstraint(0, mostCuts == long.MaxValue ? double.PositiveInfinity : mostCuts);
        for (var c = 0; c < columns.Length; c++)
        {
            var cuts = EasierCutting.Labor.CutsOf(grid, columns[c].Pattern);
            length.SetCoefficient(times[c], columns[c].Height);
            passes.SetCoefficient(times[c], cuts);
            foreach (var height in EasierCutting.Labor.SettingsOf(grid, columns[c].Pattern))
            {
                var open = solver.MakeConstraint(double.NegativeInfinity, 0);
                open.SetCoefficient(times[c], 1);
                open.SetCoefficient(used[heights.BinarySearch(height)], -most[c]);
            }

            if (settings is not null)
            {
                objective.SetCoefficient(times[c], cuts);
            }
        }

        if (settings is { } count)
        {
            var limit = solver.MakeConstraint(0, count);
            foreach (var height in used)
            {
                limit.SetCoefficient(height, 1);
            }
        }
        else
        {
            foreach (var height in used)
            {
                objective.SetCoefficient(height, 1);
            }
        }

        Hint(solver, heights, times, used, start);
        return Run(solver, times, start);
    }

    private int MostTimes(Column column)
    {
        var most = 0;
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            most = Math.Max(most, (grid.Counts[column.Pieces[i]] + column.Copies[i] - 1) / column.Copies[i]);
        }

        return most;
    }

    private void Hint(Solver solver, ImmutableArray<int> heights, Variable[] times, Variable[] used, ImmutableArray<CutStrips> start)
    {
        var counts = start.GroupBy(s => Column.Of(grid, s.Pattern)).ToDictionary(s => s.Key, s => s.Sum(x => x.Times));
        var open = start.SelectMany(s => EasierCutting.Labor.SettingsOf(grid, s.Pattern)).ToHashSet();
        solver.SetHint(
            [.. times, .. used],
            [.. columns.Select(c => (double)counts.GetValueOrDefault(c)), .. heights.Select(h => open.Contains(h) ? 1.0 : 0.0)]
        );
    }

    private ImmutableArray<CutStrips>? Run(Solver solver, Variable[] times, ImmutableArray<CutStrips> start)
    {
        // Each column has a row of its own here, for its ruler setting.
        var size = 2 * columns.Length;
        var nodes = SetCover.MostNodes(meter, size);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.SetSolverSpecificParametersAsString(string.Create(CultureInfo.InvariantCulture, $"limits/totalnodes = {nodes}"));
        solver.SetTimeLimit((long)Math.Clamp(meter.UntilSafetyStop.TotalMilliseconds, 1, int.MaxValue));
        using var interrupt = meter.Cancellation.Register(() => solver.InterruptSolve());
        var status = solver.Solve(parameters);
        meter.Charge(SetCover.StepsOfRoot(size) + SetCover.StepsOfIterations(solver.Iterations(), size));
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return null;
        }

        var strips = columns
            .Zip(times, (column, time) => new CutStrips(column.Pattern, (int)Math.Round(time.SolutionValue())))
            .Where(s => s.Times > 0)
            .ToImmutableArray();
        var enough = Enumerable
            .Range(0, grid.Pieces.Length)
            .All(piece => strips.Sum(s => s.Times * Surplus.CopiesOf(grid, s.Pattern, piece)) >= grid.Counts[piece]);
        strips = enough ? Surplus.Remove(grid, strips) : start;
        var better =
            CutStrips.TotalHeight(strips) <= longest
            && EasierCutting.Labor.Of(grid, strips).Cuts <= mostCuts
            && EasierCutting.Labor.Of(grid, strips).CompareTo(EasierCutting.Labor.Of(grid, start)) < 0;
        return better ? strips : null;
    }
}
