using System.Text.Json;
using CsCheck;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Optimise.Allocation;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Optimise.Tests.Allocation.BoltCases;

namespace Kitwright.Optimise.Tests.Allocation;

public sealed class CpSatBoltsTest
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static BoltAllocation Solve(BoltProblem problem) => CpSatBolts.Solve(problem, BoltBudget.Planning, null, Cancel);

    [Fact]
    public void Meets_the_exhaustive_search_and_proves_it() =>
        Small.Sample(
            problem =>
            {
                var best = ExhaustiveSearch.Best(problem);
                var found = Solve(problem);
                Assert.Equal(best, (found.Figures.Unmet, found.Figures.Waste.InInches, found.Figures.Opened, found.Figures.Kept.InInches));
                Assert.True(found.Proved);
                Assert.Equal("done", found.StoppedBy);
            },
            iter: 300
        );

    [Fact]
    public void Best_fit_decreasing_is_never_better_than_the_exhaustive_search_and_its_bounds_hold() =>
        Small.Sample(
            problem =>
            {
                var best = ExhaustiveSearch.Best(problem);
                var found = BestFitDecreasing.Solve(problem, null, Cancel);
                Assert.True(best.Unmet <= found.Figures.Unmet);
                Assert.True(found.Goals[0].Bound <= best.Unmet);
                if (best.Unmet == found.Figures.Unmet)
                {
                    Assert.True(found.Goals[1].Bound <= best.Waste);
                    Assert.True(found.Goals[1].Value >= best.Waste);
                }
            },
            iter: 500
        );

    [Fact]
    public void Finds_what_best_fit_decreasing_misses()
    {
        // Room for 10 in each: 5 + 3 + 2 and 4 + 4 + 2 fill both bolts; best fit decreasing lays 5 + 4 and 4 + 3 + 2.
        var problem = Problem(
            [Bolt("a", "x", 11), Bolt("b", "x", 11)],
            [FreeKits("c", 1, 5), FreeKits("d", 2, 4), FreeKits("e", 1, 3), FreeKits("f", 2, 2)],
            useful: 2
        );
        Assert.Equal(1, BestFitDecreasing.Solve(problem, null, Cancel).Figures.Unmet);
        var found = Solve(problem);
        Assert.Equal(0, found.Figures.Unmet);
        Assert.Equal(Length.Inches(2), found.Figures.Waste);
        Assert.True(found.Proved);
    }

    [Fact]
    public void The_cuts_of_a_set_never_mix_lots()
    {
        var apart = Problem([Bolt("a", "x", 11), Bolt("b", "y", 11)], [FreeKits("c", 1, 9, 8)]);
        var together = Problem([Bolt("a", "x", 11), Bolt("b", "y", 11)], [OneLotKits("c", 1, 9, 8)]);
        Assert.Equal(0, Solve(apart).Figures.Unmet);
        Assert.Equal(2, Solve(together).Figures.Unmet);
        Assert.True(Solve(together).Proved);
    }

    [Fact]
    public void More_stock_never_leaves_more_unmet() =>
        Gen.Select(Small, Gen.Int[1, 60]).Sample(
            (problem, more) =>
            {
                var bigger = problem with { Bolts = problem.Bolts.Add(Bolt("more", "lot0", more)) };
                Assert.True(Solve(bigger).Figures.Unmet <= Solve(problem).Figures.Unmet);
            },
            iter: 100
        );

    [Fact]
    public void A_bigger_load_loss_never_leaves_less_unmet() =>
        Small.Sample(
            problem =>
            {
                var bigger = problem with { LoadLoss = problem.LoadLoss + Length.Inch };
                Assert.True(Solve(bigger).Figures.Unmet >= Solve(problem).Figures.Unmet);
            },
            iter: 100
        );

    [Fact]
    public void The_order_of_bolts_changes_nothing() =>
        Small.Sample(
            problem =>
            {
                var turned = problem with { Bolts = [.. problem.Bolts.Reverse()] };
                Assert.Equal(0, Solve(turned).Figures.CompareTo(Solve(problem).Figures));
            },
            iter: 100
        );

    [Fact]
    public void The_same_problem_gives_the_same_answer_under_a_work_limit()
    {
        var problem = BoltBenchmarks.Irregular(bolts: 12, kinds: 4, kits: 20, seed: 3);
        var budget = new BoltBudget(0.05, TimeSpan.FromMinutes(5));
        var first = CpSatBolts.Solve(problem, budget, null, Cancel);
        var second = CpSatBolts.Solve(problem, budget, null, Cancel);
        Assert.Equal(JsonSerializer.Serialize(first, PlanJson.Options), JsonSerializer.Serialize(second, PlanJson.Options));
    }

    [Fact]
    public void A_search_that_is_cut_short_still_answers_and_says_so()
    {
        var problem = BoltBenchmarks.Irregular(bolts: 24, kinds: 4, kits: 60, seed: 1);
        var found = CpSatBolts.Solve(problem, new(0.0001, TimeSpan.FromMinutes(5)), null, Cancel);
        Assert.Equal("work-limit", found.StoppedBy);
        Assert.True(found.Figures.CompareTo(BestFitDecreasing.Solve(problem, null, Cancel).Figures) <= 0);
        Assert.False(found.Proved);
    }
}
