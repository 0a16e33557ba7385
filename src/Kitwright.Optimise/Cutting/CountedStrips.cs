using Google.OrTools.LinearSolver;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The linear program of the strips with the number of strips of every height held between limits, by column generation:
/// a strip of a height that is scarce has to be worth its height and what such a strip is short by.
/// </summary>
/// <remarks>
/// By GLOP, since a few hundred of these programs are solved, each with rows of its own. A strip may be higher than its
/// pieces here, or hold none, so that a least number of strips can always be met.
/// </remarks>
internal sealed class CountedStrips : IDisposable
{
    private const double Tolerance = 1e-6;

    // Measured on programs of 5 to 79 rows and 20 to 600 columns.
    private const int StepsPerSolve = 50_000;
    private const int StepsPerColumn = 1_400;
    private const int StepsPerIteration = 4_000;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly StripKnapsack knapsack;
    private readonly long scale;
    private readonly Solver solver = Solver.CreateSolver("GLOP");
    private readonly Objective objective;
    private readonly Constraint[] demand;
    private readonly Constraint[] counts;
    private readonly HashSet<(int Height, Column Column)> known = [];
    private readonly List<(int Height, Column Column)> columns = [];
    private readonly List<Variable> variables = [];
    private readonly Variable[] others;
    private readonly double[] values;
    private readonly int[] timesOfWay;

    public CountedStrips(StripGrid grid, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        knapsack = new(grid);
        scale = StripKnapsack.ScaleFor(grid);
        timesOfWay = new int[grid.Ways.Length];
        values = new double[grid.Heights.Length];
        objective = solver.Objective();
        objective.SetMinimization();
        demand = [.. grid.Counts.Select(count => solver.MakeConstraint(count, double.PositiveInfinity))];
        counts = [.. grid.Heights.Select(_ => solver.MakeConstraint(0, double.PositiveInfinity))];
        others = [.. grid.Heights.Select(EmptyStrip), .. grid.Counts.Select(MissingPiece)];
    }

    public long Scale => scale;

    /// <summary>Null where the work is used up or numbers fail.</summary>
    public CountedRelaxation? Solve(CountLimits limits)
    {
        for (var h = 0; h < counts.Length; h++)
        {
            counts[h].SetBounds(limits.AtLeast[h], limits.AtMost[h]);
        }

        while (!meter.MustStop)
        {
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                return null;
            }

            meter.Charge(StepsPerSolve + (StepsPerColumn * (long)columns.Count) + (StepsPerIteration * solver.Iterations()));
            long[] duals = [.. demand.Select(row => (long)Math.Floor(Math.Max(0, row.DualValue()) * scale))];
            long[] heightDuals = [.. counts.Select(row => (long)Math.Floor(row.DualValue() * scale))];
            knapsack.Solve(duals, grid.Counts.AsSpan());
            meter.Charge(knapsack.Cells / 4);
            var found = Values(limits, duals, heightDuals);
            if (!AddImproving(heightDuals))
            {
                return found;
            }
        }

        return null;
    }

    public void Dispose()
    {
        foreach (var part in (IEnumerable<IDisposable>)[.. variables, .. others, .. demand, .. counts, objective, solver])
        {
            part.Dispose();
        }
    }

    /// <summary>What the program says, read before columns are added to it.</summary>
    private CountedRelaxation Values(CountLimits limits, long[] duals, long[] heightDuals)
    {
        Array.Clear(values);
        for (var h = 0; h < values.Length; h++)
        {
            values[h] = others[h].SolutionValue();
        }

        var strips = new List<(Column Column, double Times)>();
        for (var i = 0; i < variables.Count; i++)
        {
            if (variables[i].SolutionValue() is > 1e-9 and var times)
            {
                values[columns[i].Height] += times;
                strips.Add((columns[i].Column, times));
            }
        }

        // A strip is never worth more than its height once its height's dual gives way.
        long[] feasible = [.. heightDuals.Select((dual, h) => Math.Min(dual, (grid.Heights[h] * scale) - knapsack.Value(h)))];
        return new(limits, [.. duals], [.. feasible], [.. values], strips);
    }

    private bool AddImproving(long[] heightDuals)
    {
        var added = false;
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            var worth = (double)(knapsack.Value(h) + heightDuals[h]) / scale;
            if (worth > grid.Heights[h] * (1 + Tolerance))
            {
                Array.Clear(timesOfWay);
                knapsack.Cut(h, timesOfWay);
                added |= Add(h, Column.Proper(grid, timesOfWay, grid.Counts.AsSpan()));
            }
        }

        return added;
    }

    private bool Add(int height, Column column)
    {
        if (column.Pieces.IsEmpty || !known.Add((height, column)))
        {
            return false;
        }

        var variable = NewVariable(grid.Heights[height]);
        counts[height].SetCoefficient(variable, 1);
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            demand[column.Pieces[i]].SetCoefficient(variable, column.Copies[i]);
        }

        variables.Add(variable);
        columns.Add((height, column));
        return true;
    }

    private Variable EmptyStrip(int height, int index)
    {
        var variable = NewVariable(height);
        counts[index].SetCoefficient(variable, 1);
        return variable;
    }

    /// <summary>Dear enough that none is missing where limits can be met, and little enough for duals in whole numbers.</summary>
    private Variable MissingPiece(int count, int piece)
    {
        var variable = NewVariable(2.0 * grid.Heights[^1]);
        demand[piece].SetCoefficient(variable, 1);
        return variable;
    }

    private Variable NewVariable(double price)
    {
        var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
        objective.SetCoefficient(variable, price);
        return variable;
    }
}
