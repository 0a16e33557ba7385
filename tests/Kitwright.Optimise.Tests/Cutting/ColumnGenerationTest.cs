using System.Collections.Immutable;
using System.Text.Json;
using CsCheck;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;
using Kitwright.Tests.Cutting;
using Xunit;

namespace Kitwright.Optimise.Tests.Cutting;

public sealed class ColumnGenerationTest
{
    private static readonly Gen<ClothProblem> Small =
        from width in Gen.Int[6, 16]
        from pieces in Gen.Select(Gen.Int[1, 12], Gen.Int[1, 9], Gen.Int[1, 3], Gen.Bool).List[1, 5]
        where pieces.Sum(p => p.Item3) <= 8 && pieces.All(p => p.Item1 <= width)
        select Problem(width, pieces);

    private static readonly Gen<ClothProblem> Larger =
        from width in Gen.Int[20, 44]
        from pieces in Gen.Select(Gen.Int[1, 18], Gen.Int[1, 12], Gen.Int[1, 60], Gen.Bool).List[1, 7]
        select Problem(width, pieces);

    private static ClothProblem Problem(int width, IEnumerable<(int Width, int Height, int Count, bool Turn)> pieces) =>
        Cloth.Of($"{width}", [.. pieces.Select(p => ($"{p.Width} x {p.Height}{(p.Turn ? " turn" : "")}", p.Count))]);

    private static ClothPlan Cut(ClothProblem problem, WorkBudget? budget = null)
    {
        // A busy machine must not stop the search: only the work limit may.
        budget = (budget ?? WorkBudget.Normal) with { SafetyStop = TimeSpan.FromHours(1) };
        var plan = ColumnGeneration.Plan(problem, budget, TestContext.Current.CancellationToken).Value!;
        Assert.NotEqual("clock", plan.Proof.StoppedBy);
        Assert.Empty(PlanAudit.Of(plan));
        return plan;
    }

    [Fact]
    public void Small_cases_are_cut_in_the_least_length_and_proved()
    {
        const int cases = 2000;
        var proved = 0;
        Small.Sample(
            problem =>
            {
                var plan = Cut(problem);
                Assert.Equal(EveryWayOfCutting.Least(problem), plan.Cut.InInches);
                Assert.NotEqual(ProofStatus.Within, plan.Proof.Status);
                Interlocked.Add(ref proved, plan.Proof.Status == ProofStatus.Proved ? 1 : 0);
            },
            iter: cases,
            threads: 1
        );
        // Most need no search: the bound alone meets the length.
        Assert.True(proved > cases / 2, $"{proved} of {cases} by the bound");
    }

    [Fact]
    public void Plans_are_never_longer_than_first_fits_and_never_shorter_than_the_bound() =>
        Larger.Sample(
            problem =>
            {
                var plan = Cut(problem, WorkBudget.WhileYouType);
                var simple = FirstFit.Plan(problem).Value!;
                Assert.True(plan.Cut <= simple.Cut);
                Assert.True(plan.Proof.Bound >= simple.Proof.Bound);
                Assert.Equal(0, plan.Figures.Surplus);
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void Very_long_strips_of_tiny_pieces_are_searched_no_longer_than_was_allowed()
    {
        // Such strips have patterns without number, of which none need be worth keeping.
        var random = new Random(1);
        var pieces = Enumerable.Range(0, 60).Select(_ => (random.Next(1, 14), random.Next(1, 14), random.Next(1, 121), random.Next(2) == 0));
        var plan = Cut(Problem(2500, pieces), WorkBudget.WhileYouType);
        Assert.InRange(plan.Proof.Work, 0, 2 * WorkBudget.WhileYouType.Steps);
    }

    [Fact]
    public void The_same_problem_gives_the_same_plan() =>
        Larger.Sample(
            problem =>
            {
                var (first, second) = (Cut(problem, WorkBudget.WhileYouType), Cut(problem, WorkBudget.WhileYouType));
                Assert.Equal(
                    System.Text.Json.JsonSerializer.Serialize(first, PlanJson.Options),
                    System.Text.Json.JsonSerializer.Serialize(second, PlanJson.Options)
                );
            },
            iter: 30,
            threads: 1
        );

    [Fact]
    public void More_cloth_across_or_leave_to_turn_never_raises_the_least_length() =>
        Small.Sample(
            problem =>
            {
                var least = Cut(problem).Cut;
                var terms = problem.Terms with { UsableWidth = problem.Terms.UsableWidth + Length.Inch };
                Assert.True(Cut(problem with { Terms = terms }).Cut <= least);
                Assert.True(Cut(problem with { Demand = [.. problem.Demand.Select(d => d with { MayTurn = true })] }).Cut <= least);
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void One_piece_more_never_lowers_the_least_length() =>
        Small.Sample(
            problem =>
            {
                var more = problem.Demand.SetItem(0, problem.Demand[0] with { Count = problem.Demand[0].Count + 1 });
                Assert.True(Cut(problem with { Demand = more }).Cut >= Cut(problem).Cut);
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void All_lengths_times_three_take_three_times_the_cloth() =>
        Small.Sample(
            problem =>
            {
                var larger = problem with
                {
                    Terms = problem.Terms with { UsableWidth = problem.Terms.UsableWidth * 3 },
                    Demand = [.. problem.Demand.Select(d => d with { Width = d.Width * 3, Height = d.Height * 3 })],
                };
                Assert.Equal(Cut(problem).Cut * 3, Cut(larger).Cut);
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void Pieces_asked_for_in_another_order_or_in_two_lines_take_as_much_cloth() =>
        Small.Sample(
            problem =>
            {
                var least = Cut(problem).Cut;
                Assert.Equal(least, Cut(problem with { Demand = [.. problem.Demand.Reverse()] }).Cut);
                var first = problem.Demand[0];
                var apart = problem.Demand.SetItem(0, first with { Count = 1 });
                if (first.Count > 1)
                {
                    apart = apart.Add(first with { Piece = new("piece/apart"), Label = "apart", Count = first.Count - 1 });
                    Assert.Equal(least, Cut(problem with { Demand = apart }).Cut);
                }
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void A_piece_that_may_turn_never_raises_the_bound_of_the_linear_program() =>
        Larger.Sample(TurningNeverRaisesTheBound, iter: 150, threads: 1);

    /// <summary>
    /// Pieces that are wanted less often than a strip could hold them both ways: the master once ended early, since the
    /// table's best strip held them too often and was known once it was cropped.
    /// </summary>
    [Fact]
    public void A_piece_that_may_turn_never_raises_the_bound_where_it_is_wanted_seldom() =>
        Larger.Sample(TurningNeverRaisesTheBound, seed: "4Sy6SfctwYD3", iter: 1, threads: 1);

    private static void TurningNeverRaisesTheBound(ClothProblem problem)
    {
        var turned = problem with { Demand = [.. problem.Demand.Select(d => d with { MayTurn = true })] };
        Assert.True(LinearLength(turned) <= LinearLength(problem) * (1 + 1e-6), $"{LinearLength(turned)} after {LinearLength(problem)}");
    }

    private static double LinearLength(ClothProblem problem)
    {
        var grid = ClothIntake.Of(problem).Grid!;
        var meter = new WorkMeter(WorkBudget.Thorough with { SafetyStop = TimeSpan.FromHours(1) }, TestContext.Current.CancellationToken);
        var generator = new ColumnGenerator(grid, meter);
        Assert.True(generator.Solve(grid.Counts.AsSpan(), long.MaxValue));
        return generator.Length;
    }

    [Fact]
    public void Equal_seeds_give_equal_plans_and_any_seed_one_that_holds()
    {
        var problem = Cloth.Of(
            "42",
            [.. Enumerable.Range(0, 14).Select(i => ($"{3 + (i * 7 % 11)}/2 x {5 + (i * 5 % 13)}/2{(i % 2 == 0 ? " turn" : "")}", 20 + (i * 31 % 90)))]
        );
        var plans = new[] { 1, 1, 2 }.Select(seed => Cut(problem, WorkBudget.WhileYouType with { Seed = seed })).ToArray();
        Assert.Equal(JsonSerializer.Serialize(plans[0], PlanJson.Options), JsonSerializer.Serialize(plans[1], PlanJson.Options));
        Assert.All(plans, plan => Assert.True(plan.Cut <= FirstFit.Plan(problem).Value!.Cut));
    }

    [Fact]
    public void By_the_step_the_purchase_is_least_and_cutting_is_no_harder() =>
        Larger.Sample(
            problem =>
            {
                var byInch = Cut(problem, WorkBudget.WhileYouType);
                var byStep = Cut(problem with { Goal = CutGoal.ByTheStep }, WorkBudget.WhileYouType);
                Assert.True(byStep.Purchase <= byInch.Purchase);
                if (byStep.Purchase == byInch.Purchase)
                {
                    Assert.True(byStep.Figures.StripWidths <= HandbookWay.Plan(problem).Value!.Figures.StripWidths || byStep.Purchase < HandbookWay.Plan(problem).Value!.Purchase);
                }
            },
            iter: 60,
            threads: 1
        );

    [Fact]
    public void Two_sizes_that_need_strips_of_their_own_are_not_trimmed_from_one()
    {
        // A person sets the ruler twice either way; trimming 42 squares on top would be work for nothing.
        var plan = Cut(Cloth.Of("40", ("5/2 x 5/2", 42), ("11/4 x 11/4", 42)));
        Assert.Equal((2, 6, 84, 0), (plan.Figures.StripWidths, plan.Figures.Strips, plan.Figures.SubCuts, plan.Figures.Trims));
    }

    [Fact]
    public void Where_the_handbooks_way_is_bought_as_long_it_never_takes_fewer_cuts() =>
        Larger.Sample(
            problem =>
            {
                var plan = Cut(problem with { Goal = CutGoal.ByTheStep }, WorkBudget.WhileYouType);
                var handbook = HandbookWay.Plan(problem).Value!;
                if (handbook.Purchase == plan.Purchase && handbook.Strips.Max(s => s.Height) <= plan.Strips.Max(s => s.Height))
                {
                    Assert.True(Cuts(plan) <= Cuts(handbook), $"{Cuts(plan)} against {Cuts(handbook)}");
                }
            },
            iter: 60,
            threads: 1
        );

    private static int Cuts(ClothPlan plan) => plan.Figures.Strips + plan.Figures.SubCuts + plan.Figures.Trims;

    [Fact]
    public void A_cancelled_search_answers_with_what_it_has()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var problem = Cloth.Of("40", ("7 x 5", 100), ("3 1/2 x 2 1/4 turn", 77), ("9 3/8 x 4 1/8", 41), ("2 x 6 turn", 230));
        var plan = ColumnGeneration.Plan(problem, WorkBudget.Thorough, cancelled.Token).Value!;
        Assert.Empty(PlanAudit.Of(plan));
        Assert.Equal("cancel", plan.Proof.StoppedBy);
        Assert.Equal(FirstFit.Plan(problem).Value!.Cut, plan.Cut);
    }

    [Fact]
    public void Findings_and_the_rest_planned_as_by_first_fit()
    {
        var none = TestContext.Current.CancellationToken;
        var plan = ColumnGeneration.Plan(Cloth.Of("40", ("5 x 5", 8), ("41 x 3", 1)), WorkBudget.Normal, none);
        Assert.Equal("cutting.too-wide-unturned", Assert.Single(plan.Findings).Rule);
        Assert.Equal(Length.Inches(5), plan.Value!.Cut);
        Assert.Null(ColumnGeneration.Plan(Cloth.Of("40", ("41 x 3", 1)), WorkBudget.Normal, none).Value);
    }

    [Fact]
    public void Progress_tells_of_a_shrinking_gap()
    {
        var seen = new List<CutProgress>();
        var problem = Cloth.Of("42", ("7 x 5", 100), ("3 1/2 x 2 1/4 turn", 77), ("9 3/8 x 4 1/8", 41), ("2 x 6 turn", 230));
        ColumnGeneration.Plan(problem, WorkBudget.WhileYouType, TestContext.Current.CancellationToken, new Listener(seen.Add));
        Assert.NotEmpty(seen);
        Assert.All(seen, p => Assert.True(p.Bound <= p.Length));
        Assert.All(seen.Zip(seen.Skip(1)), p => Assert.True(p.Second.Length <= p.First.Length && p.Second.Bound >= p.First.Bound));
    }

    private sealed class Listener(Action<CutProgress> listen) : IProgress<CutProgress>
    {
        public void Report(CutProgress value) => listen(value);
    }
}
