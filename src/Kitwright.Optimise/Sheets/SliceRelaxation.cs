using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// A bound for three stages on a cloth of open length, where strips may be as high as one likes: pieces are taken apart
/// into slices one unit high, and slices of any pieces may lie side by side.
/// </summary>
/// <remarks>
/// G. Scheithauer, "LP-based bounds for the container and multi-container loading problem", International Transactions in
/// Operational Research 6 (1999), for bars; from memory. Solved by column generation. What is proved follows from whole
/// duals: a slice of a piece is worth its dual over its height, rounded up.
/// </remarks>
internal sealed class SliceRelaxation(SheetGrid grid, WorkMeter meter)
{
    private const int MostRounds = 500;

    /// <summary>Below, a better row of slices is noise of the solver's floating point.</summary>
    private const double LeastGain = 1e-7;

    private readonly ImmutableArray<Plate> plates = Plate.All(grid);
    private readonly BoundedKnapsack knapsack = new(meter);

    /// <summary>The bound in cost units with its duals in 1/<paramref name="scale"/>; null where the work is used up.</summary>
    public (long Bound, ImmutableArray<long> Duals)? Solve(long scale)
    {
        using var solver = Solver.CreateSolver("GLOP");
        using var objective = solver.Objective();
        objective.SetMinimization();
        var rows = grid.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity)).ToArray();
        var variables = new List<Variable>();
        void Add(Plate plate, IEnumerable<(int Id, int Copies)> slices)
        {
            var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
            objective.SetCoefficient(variable, 1);
            foreach (var piece in slices.GroupBy(slice => plate.Ways[slice.Id].Piece))
            {
                rows[piece.Key].SetCoefficient(variable, piece.Sum(s => (double)s.Copies * plate.Layers / plate.Ways[s.Id].Across));
            }

            variables.Add(variable);
        }

        try
        {
            foreach (var plate in plates)
            {
                for (var way = 0; way < plate.Ways.Length; way++)
                {
                    var fits = Math.Min(plate.Across / plate.Ways[way].Along, InLayer(plate, plate.Ways[way].Piece));
                    Add(plate, [(way, fits)]);
                }
            }

            long[] duals = [];
            for (var round = 0; round < MostRounds && !meter.MustStop; round++)
            {
                if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
                {
                    break;
                }

                meter.Charge(1000L * (rows.Length + 10) * (1 + (solver.Iterations() / 10)));
                duals = [.. rows.Select(row => (long)Math.Floor(Math.Max(0, row.DualValue()) * scale))];
                var improved = false;
                foreach (var plate in plates)
                {
                    Fill(plate, duals);
                    if (knapsack.Value(plate.Across) * plate.Layers > scale * (1 + LeastGain))
                    {
                        Add(plate, knapsack.Choice(plate.Across));
                        improved = true;
                    }
                }

                if (!improved)
                {
                    break;
                }
            }

            return duals.Length == 0 ? null : (Bound(duals, scale), [.. duals.Select(dual => dual * grid.Sheets[0].Cost)]);
        }
        finally
        {
            variables.ForEach(variable => variable.Dispose());
            foreach (var row in rows)
            {
                row.Dispose();
            }
        }
    }

    /// <summary>Farley's bound, in cost units, from duals of one unit of length.</summary>
    private long Bound(long[] duals, long scale)
    {
        var worst = scale;
        long[] priced = [.. duals.Select(dual => dual * grid.Sheets[0].Cost)];
        worst *= grid.Sheets[0].Cost;
        foreach (var plate in plates)
        {
            Fill(plate, priced);
            worst = Math.Max(worst, knapsack.Value(plate.Across) * plate.Layers);
        }

        var sum = Int128.Zero;
        for (var i = 0; i < priced.Length; i++)
        {
            sum += (Int128)priced[i] * grid.Counts[i];
        }

        var cost = ((sum * grid.Sheets[0].Cost) + worst - 1) / worst;
        return SheetAreaBound.RoundUp(grid, (long)cost);
    }

    private void Fill(Plate plate, long[] duals)
    {
        knapsack.Reset(plate.Across);
        for (var w = 0; w < plate.Ways.Length; w++)
        {
            var way = plate.Ways[w];
            knapsack.Add(w, way.Along, (duals[way.Piece] + way.Across - 1) / way.Across, InLayer(plate, way.Piece));
        }
    }

    private int InLayer(Plate plate, int piece) => (grid.Counts[piece] + plate.Layers - 1) / plate.Layers;
}
