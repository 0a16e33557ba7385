using CsCheck;
using Kitwright.Checking;
using Kitwright.Cutting;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;
using Kitwright.Tests.Cutting;
using Xunit;

namespace Kitwright.Optimise.Tests.Cutting;

/// <summary>Bounds by cases, against trying everything and the checker, which shares no code with them.</summary>
public sealed class BranchOnCountsTest
{
    private static readonly Gen<ClothProblem> Small =
        from width in Gen.Int[6, 16]
        from pieces in Gen.Select(Gen.Int[1, 12], Gen.Int[1, 9], Gen.Int[1, 3], Gen.Bool).List[1, 5]
        where pieces.Sum(p => p.Item3) <= 7 && pieces.All(p => p.Item1 <= width)
        select Problem(width, pieces);

    private static readonly Gen<ClothProblem> Larger =
        from width in Gen.Int[20, 44]
        from turn in Gen.Bool
        from pieces in Gen.Select(Gen.Int[1, 18], Gen.Int[1, 30], Gen.Int[1, 60], Gen.Bool).List[2, 7]
        select Problem(width, pieces.Select(p => p with { Item4 = turn && p.Item4 }));

    private static ClothProblem Problem(int width, IEnumerable<(int Width, int Height, int Count, bool Turn)> pieces) =>
        Cloth.Of($"{width}", [.. pieces.Select(p => ($"{p.Width} x {p.Height}{(p.Turn ? " turn" : "")}", p.Count))]);

    /// <summary>Two strips and a half, says the linear program; by cases there are three.</summary>
    [Fact]
    public void Five_pieces_two_to_a_strip_take_three_strips()
    {
        var (grid, linear, cases) = Bounds(Cloth.Of("10", ("5 x 7", 5)), long.MaxValue);
        Assert.Equal(17.5, linear * (double)grid.Unit.InInches.ToDouble(), tolerance: 1e-4);
        Assert.Equal(21, grid.Unit.InInches * cases!.Length);
    }

    [Fact]
    public void No_bound_is_above_the_least_length() =>
        Small.Sample(
            problem =>
            {
                var (grid, _, cases) = Bounds(problem, long.MaxValue);
                Assert.True(cases is null || cases.Length * grid.Unit.InInches <= EveryWayOfCutting.Least(problem));
            },
            iter: 200,
            threads: 1
        );

    [Fact]
    public void The_checker_comes_to_the_same_bound_which_is_above_the_linear_programs()
    {
        var raised = 0;
        Larger.Sample(
            problem =>
            {
                var strips = FirstFit.Strips(ClothIntake.Of(problem).Grid!);
                var (grid, linear, cases) = Bounds(problem, CutStrips.TotalHeight(strips) - 1);
                if (cases is null)
                {
                    return;
                }

                Interlocked.Increment(ref raised);
                // The knapsack of the bound holds a piece that may turn to its count each way, that of the program both ways together.
                // The program's demand is a hair more than is wanted, lest it goes in circles.
                Assert.True(cases.Length >= linear - 1e-3 || problem.Demand.Any(d => d.MayTurn));
                var plan = TableOrder.Write(problem, grid, strips, cases, "first fit", 0, "done");
                Assert.NotNull(plan.Proof.Cases);
                Assert.Empty(ClothChecker.Check(plan).Where(f => f.Rule.Contains("bound", StringComparison.Ordinal)));
            },
            iter: 150,
            threads: 1
        );
        Assert.InRange(raised, 50, 150);
    }

    private static (StripGrid Grid, double Linear, StripBound? Cases) Bounds(ClothProblem problem, long aim)
    {
        var grid = ClothIntake.Of(problem).Grid!;
        var meter = new WorkMeter(WorkBudget.Normal with { SafetyStop = TimeSpan.FromHours(1) }, TestContext.Current.CancellationToken);
        var generator = new ColumnGenerator(grid, meter);
        Assert.True(generator.Solve(grid.Counts.AsSpan(), long.MaxValue));
        using var branching = new BranchOnCounts(grid, new(grid.Heights), meter);
        var most = grid.Heights[^1] * grid.Count;
        branching.Run(() => Math.Min(aim, most), _ => { }, meter);
        return (grid, generator.Length, branching.Proof);
    }
}
