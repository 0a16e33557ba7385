using System.Collections.Immutable;
using CsCheck;
using Kitwright.Checking;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;
using Kitwright.Tests.Cutting;
using Xunit;

namespace Kitwright.Optimise.Tests.Cutting;

/// <summary>The order in which cloth, settings and cuts count, and strips cut in layers with the edge squared again.</summary>
public sealed class OrderOfAimsTest
{
    private static readonly Gen<ClothProblem> Problems =
        from width in Gen.Int[20, 44]
        from pieces in Gen.Select(Gen.Int[1, 18], Gen.Int[1, 12], Gen.Int[1, 60], Gen.Bool).List[1, 6]
        select Cloth.Of($"{width}", [.. pieces.Select(p => ($"{p.Item1} x {p.Item2}{(p.Item4 ? " turn" : "")}", p.Item3))]);

    private static ClothPlan Cut(ClothProblem problem)
    {
        var budget = WorkBudget.WhileYouType with { SafetyStop = TimeSpan.FromHours(1) };
        var plan = ColumnGeneration.Plan(problem, budget, TestContext.Current.CancellationToken).Value!;
        Assert.Empty(ClothChecker.Check(plan));
        return plan;
    }

    /// <summary>Ruler settings of strips and of what is trimmed from them.</summary>
    private static int Settings(ClothPlan plan)
    {
        var demand = plan.Demand.ToDictionary(d => d.Piece);
        return plan
            .Strips.SelectMany(s => s.SubCuts.Select(c => c.Stack[0].Turned ? demand[c.Stack[0].Piece].Width : demand[c.Stack[0].Piece].Height).Append(s.Height))
            .Distinct()
            .Count();
    }

    private static int Cuts(ClothPlan plan) => plan.Figures.Strips + plan.Figures.SubCuts + plan.Figures.Trims;

    [Fact]
    public void What_counts_first_is_no_worse_than_where_it_counts_later() =>
        Problems.Sample(
            problem =>
            {
                problem = problem with { Goal = CutGoal.ByTheStep };
                var usual = Cut(problem);
                Assert.True(Settings(Cut(problem with { Order = CutOrder.With(CutOrder.Usual, 0, CutAim.Settings) })) <= Settings(usual));
                Assert.True(Cuts(Cut(problem with { Order = CutOrder.With(CutOrder.Usual, 0, CutAim.Cuts) })) <= Cuts(usual));
                var least = Cut(problem with { Order = [CutAim.Purchase, CutAim.Leftover, CutAim.Settings, CutAim.Cuts, CutAim.Surplus] });
                Assert.True(least.Purchase == usual.Purchase && least.Cut <= usual.Cut);
            },
            iter: 40,
            threads: 1
        );

    [Fact]
    public void One_setting_is_kept_where_settings_count_before_cloth()
    {
        // Laid with their longer sides across, the second kind takes less cloth at a setting of its own.
        var problem = Cloth.Of("40", ("3 x 5", 13), ("3 x 13 turn", 13), ("5 x 7 turn", 20)) with { Goal = CutGoal.ByTheStep };
        var (cloth, settings) = (Cut(problem), Cut(problem with { Order = CutOrder.With(CutOrder.Usual, 0, CutAim.Settings) }));

        Assert.True(Settings(settings) < Settings(cloth));
        Assert.True(settings.Purchase > cloth.Purchase);
    }

    [Fact]
    public void Layers_take_no_more_cloth_and_fewer_passes_of_the_blade() =>
        Problems.Sample(
            problem =>
            {
                var flat = Cut(problem);
                var (two, four) = (Cut(Layered(problem, 2)), Cut(Layered(problem, 4)));
                Assert.Null(flat.Figures.Passes);
                Assert.Equal(flat.Cut, two.Cut);
                Assert.Equal(two.Proof.Bound, four.Proof.Bound);
                Assert.InRange(two.Figures.Passes!.Value, (Cuts(two) + two.Figures.Strips) / 2, Cuts(two));
                Assert.True(four.Figures.Passes <= two.Figures.Passes);
                Assert.NotEmpty(ClothChecker.Check(two with { Figures = two.Figures with { Passes = two.Figures.Passes + 1 } }));
                Assert.NotEmpty(ClothChecker.Check(flat with { Figures = flat.Figures with { Passes = Cuts(flat) } }));
            },
            iter: 40,
            threads: 1
        );

    [Fact]
    public void A_folded_strip_gives_two_a_pass_and_the_odd_one_by_itself()
    {
        // Two strips of eight squares of 5 in, from the second only seven: 2 + 4 + 4 passes; laid on one another they differ.
        var plan = Cut(Layered(Cloth.Of("40", ("5 x 5", 15)), 2));
        Assert.Equal((2, 15, 10L), (plan.Figures.Strips, plan.Figures.SubCuts, plan.Figures.Passes));
        Assert.Equal(2 + 4, Cut(Layered(Cloth.Of("40", ("5 x 5", 16)), 4)).Figures.Passes);
    }

    [Fact]
    public void The_edge_is_squared_again_after_so_many_strips() =>
        Problems.Sample(
            problem =>
            {
                var once = Cut(problem);
                var again = Cut(problem with { Terms = problem.Terms with { Table = new(1, 3, Length.Inches(0, 1, 2)) } });
                var times = (again.Figures.Strips - 1) / 3;
                Assert.Equal(again.Cut, again.Terms.Straightening + again.Strips.Aggregate(Length.Zero, (sum, s) => sum + (s.Height * s.Times)) + (Length.Inches(0, 1, 2) * times));
                Assert.True(again.Purchase >= once.Purchase);
                if (times > 0)
                {
                    Assert.NotEmpty(ClothChecker.Check(again with { Cut = again.Cut - again.SquaringAgain }));
                }
            },
            iter: 40,
            threads: 1
        );

    [Fact]
    public void A_ruler_moves_no_length_and_must_have_one() =>
        Problems.Sample(
            problem =>
            {
                var plain = Cut(problem);
                var ruled = Cut(problem with { Terms = problem.Terms with { Table = TableTerms.Usual with { RulerLength = Length.Inches(12) } } });
                Assert.Equal((plain.Cut, plain.Purchase), (ruled.Cut, ruled.Purchase));
                Assert.Empty(ClothChecker.Check(ruled));
                foreach (var length in new[] { Length.Zero, Length.Inches(101) })
                {
                    var none = ruled with { Terms = ruled.Terms with { Table = TableTerms.Usual with { RulerLength = length } } };
                    Assert.Contains("check.cloth.terms", ClothChecker.Check(none).Select(f => f.Rule));
                }
            },
            iter: 20,
            threads: 1
        );

    private static ClothProblem Layered(ClothProblem problem, int layers) =>
        problem with { Terms = problem.Terms with { Table = TableTerms.Usual with { Layers = layers } } };
}
