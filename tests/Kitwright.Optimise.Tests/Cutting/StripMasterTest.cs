using Google.OrTools.LinearSolver;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Xunit;

namespace Kitwright.Optimise.Tests.Cutting;

/// <summary>
/// The strip master against a general solver of linear programs: the same value, whatever came before. Few enough columns
/// that it forgets none.
/// </summary>
public sealed class StripMasterTest
{
    // The master wants up to 2e-7 more of each piece than is asked, so that it does not go in circles.
    private const double Tolerance = 1e-4;

    [Fact]
    public void The_value_is_that_of_a_general_solver_on_200_random_masters()
    {
        var random = new Random(7);
        for (var i = 0; i < 200; i++)
        {
            var grid = AGrid(random);
            var meter = new WorkMeter(WorkBudget.Thorough with { SafetyStop = TimeSpan.FromHours(1) }, TestContext.Current.CancellationToken);
            var master = new StripMaster(grid, meter);
            Hold(master, grid, [.. grid.Counts], []);
            for (var round = 0; round < 4; round++)
            {
                for (var c = 0; c < 2 * grid.Pieces.Length; c++)
                {
                    master.Add(AColumn(grid, random));
                }

                // First primal steps on the same demand, then dual ones on a smaller demand with columns ruled out.
                Hold(master, grid, [.. grid.Counts], []);
                int[] less = [.. grid.Counts.Select(count => random.Next(3) == 0 ? 0 : random.Next(count + 1))];
                HashSet<Column> forbidden = [AColumn(grid, random), master[master.Count - 1]];
                // A piece cut alone is never forbidden: without it there may be no solution.
                forbidden.RemoveWhere(column => column.Copies.Sum() == 1);
                Hold(master, grid, less, forbidden);
            }
        }
    }

    private static void Hold(StripMaster master, StripGrid grid, int[] counts, HashSet<Column> forbidden)
    {
        master.Want(counts);
        master.Allow(counts, forbidden);
        Assert.True(master.Solve());
        var expected = Glop(master, grid, counts, forbidden);
        Assert.True(Math.Abs(master.Length - expected) <= Tolerance * Math.Max(1, expected), $"{master.Length} and {expected}");
        for (var piece = 0; piece < counts.Length; piece++)
        {
            Assert.True(master.Dual(piece) >= -1e-6);
        }
    }

    private static double Glop(StripMaster master, StripGrid grid, int[] counts, HashSet<Column> forbidden)
    {
        using var solver = Solver.CreateSolver("GLOP");
        using var objective = solver.Objective();
        objective.SetMinimization();
        var rows = counts.Select(count => solver.MakeConstraint(count, double.PositiveInfinity)).ToArray();
        for (var i = 0; i < master.Count; i++)
        {
            var column = master[i];
            var yields = column.Pieces.Zip(column.Copies).ToArray();
            if (forbidden.Contains(column) || yields.Any(y => y.Second > counts[y.First]))
            {
                continue;
            }

            var times = solver.MakeNumVar(0, double.PositiveInfinity, "");
            objective.SetCoefficient(times, column.Height);
            foreach (var (piece, copies) in yields)
            {
                rows[piece].SetCoefficient(times, copies);
            }
        }

        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return objective.Value();
    }

    private static StripGrid AGrid(Random random)
    {
        var width = random.Next(30, 90);
        var pieces = Enumerable
            .Range(0, random.Next(1, 25))
            .Select(i => new GridPiece(random.Next(1, width / 2), random.Next(1, 60), random.Next(1, 80), random.Next(2) == 0, [i]));
        return StripGrid.Of(Length.Inch, width, [.. pieces]);
    }

    private static Column AColumn(StripGrid grid, Random random)
    {
        var times = new int[grid.Ways.Length];
        var room = grid.Width;
        for (var tries = 0; tries < 12; tries++)
        {
            var way = random.Next(grid.Ways.Length);
            if (grid.Ways[way].Width <= room)
            {
                times[way]++;
                room -= grid.Ways[way].Width;
            }
        }

        // At least one piece is wider than nothing and narrower than half the strip, so that something fits.
        times[grid.WaysOf[0][0]] += times.Any(t => t > 0) ? 0 : 1;
        return Column.Proper(grid, times, grid.Counts.AsSpan());
    }
}
