using System.Collections.Immutable;
using CsCheck;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Cutting;

public sealed class FirstFitTest
{
    private static readonly Gen<ClothProblem> Problems =
        from width in Gen.Int[16, 64]
        from spare in Gen.Int[0, 2]
        from pieces in Gen.Select(Gen.Int[1, 80], Gen.Int[1, 40], Gen.Int[0, 60], Gen.Bool).List[0, 12]
        select Cloth.Of(Cloth.Terms($"{width}/2", "1/2")) with
        {
            SpareStrips = spare,
            Demand =
            [
                .. pieces.Select(
                    (p, i) =>
                        new ClothDemand(
                            new($"piece/A{i}"),
                            $"A{i}",
                            Length.Inches(new Rational(p.Item1, 4)),
                            Length.Inches(new Rational(p.Item2, 4)),
                            p.Item3,
                            p.Item4
                        )
                ),
            ],
        };

    [Fact]
    public void Every_plan_can_be_cut() =>
        Problems.Sample(
            problem =>
            {
                var plan = FirstFit.Plan(problem);
                if (plan.Value is { } value)
                {
                    Assert.Empty(PlanAudit.Of(value));
                    Assert.Equal(0, value.Figures.Surplus);
                    Assert.True(value.Cut <= HandbookWay.Plan(problem).Value!.Cut);
                }

                var left = problem.Demand.Where(d => plan.Value?.Demand.Contains(d) != true);
                Assert.All(left, d => Assert.Contains(plan.Findings, f => f.Place == d.Piece.Value));
            },
            iter: 2000
        );

    [Fact]
    public void The_same_problem_in_larger_units_takes_as_many_times_the_cloth() =>
        Problems.Sample(
            problem =>
            {
                var larger = problem with
                {
                    Terms = problem.Terms with { UsableWidth = problem.Terms.UsableWidth * 3, Straightening = Length.Zero },
                    Demand = [.. problem.Demand.Select(d => d with { Width = d.Width * 3, Height = d.Height * 3 })],
                };
                var plan = FirstFit.Plan(problem).Value;
                var plan3 = FirstFit.Plan(larger).Value;
                Assert.Equal(plan is null, plan3 is null);
                if (plan is not null)
                {
                    Assert.Equal((plan.Cut - plan.Terms.Straightening) * 3, plan3!.Cut);
                    Assert.Equal(plan.Proof.Bound * 3, plan3.Proof.Bound);
                }
            },
            iter: 500
        );

    [Fact]
    public void Strip_ends_take_lower_pieces()
    {
        // One strip of 5 in holds a 30 in piece, and beside it 3 of 3 by 4 in; the handbook's way takes 9 in.
        var problem = Cloth.Of("40", ("30 x 5", 1), ("3 x 4", 3));
        Assert.Equal(Length.Inches(9), HandbookWay.Plan(problem).Value!.Cut);
        var plan = FirstFit.Plan(problem).Value!;
        Assert.Equal(Length.Inches(5), plan.Cut);
        Assert.Equal(new ClothFigures(1, 1, 4, 3, 0), plan.Figures);
        Assert.Equal(ProofStatus.Proved, plan.Proof.Status);
    }

    [Fact]
    public void The_kit_margin_is_spare_strips_of_the_greatest_height()
    {
        var problem = Cloth.Of(Cloth.Terms("40", "1/2"), ("10 x 5", 4), ("4 x 4", 10)) with { SpareStrips = 1 };
        var plan = FirstFit.Plan(problem).Value!;
        Assert.Equal(Length.Inches(9, 1, 2), plan.Cut);
        Assert.Equal(Length.Inches(5), plan.Margin);
        // 14 1/2 in: half a yard, the next step of eighths or thirds.
        Assert.Equal(Cloth.Read("1/2 yd"), plan.Purchase);
    }

    [Fact]
    public void Equal_pieces_of_two_classes_share_strips_and_each_stack_is_finished_before_the_next()
    {
        var plan = FirstFit.Plan(Cloth.Of("40", ("4 x 4", 15), ("4 x 4", 15))).Value!;
        Assert.Equal(3, plan.Figures.Strips);
        Assert.Equal(
            ["A1 x10", "A1 x5 A2 x5", "A2 x10"],
            plan.Strips.SelectMany(s =>
                Enumerable.Repeat(string.Join(' ', s.SubCuts.Select(c => $"{c.Stack[0].Piece.Value[6..]} x{c.Times}")), s.Times)
            )
        );
    }

    [Theory]
    [InlineData("41 x 3", 1, "cutting.too-wide-unturned")]
    [InlineData("41 x 42 turn", 1, "cutting.too-wide")]
    [InlineData("0 x 3", 1, "cutting.size")]
    [InlineData("3 x -2", 1, "cutting.size")]
    [InlineData("3 x 200 yd", 1, "cutting.size")]
    [InlineData("3 x 3", -1, "cutting.count")]
    [InlineData("3 x 3", 2_000_000_000, "cutting.count")]
    public void What_cannot_be_cut_is_named_with_its_remedy_and_the_rest_is_planned(string size, int count, string rule)
    {
        var plan = FirstFit.Plan(Cloth.Of("40", ("5 x 5", 8), (size, count)));
        Assert.False(plan.Good);
        Assert.Equal(Length.Inches(5), plan.Value!.Cut);
        Assert.Empty(PlanAudit.Of(plan.Value));
        var finding = Assert.Single(plan.Findings);
        Assert.Equal((rule, "piece/A2"), (finding.Rule, finding.Place));
        Assert.Contains("A2", Catalog.English.Say(finding.Reason), StringComparison.Ordinal);
        Assert.NotEmpty(Catalog.English.Say(finding.Remedy));
        Assert.Null(FirstFit.Plan(Cloth.Of("40", (size, count))).Value);
    }

    [Fact]
    public void Terms_that_leave_no_cloth_are_a_finding()
    {
        var usual = ClothTerms.Usual;
        var broken = new Dictionary<string, ClothTerms>
        {
            ["cutting.no-width"] = usual with { CrossTrim = Length.Inches(40) },
            ["cutting.straightening"] = usual with { Straightening = Length.Inches(-1) },
            ["cutting.increments"] = usual with { Increments = [] },
        };
        foreach (var (rule, terms) in broken)
        {
            var plan = FirstFit.Plan(Cloth.Of(terms, ("5 x 5", 8)));
            Assert.Null(plan.Value);
            Assert.Equal(rule, Assert.Single(plan.Findings).Rule);
            Assert.NotEmpty(Catalog.English.Say(plan.Findings[0].Reason) + Catalog.English.Say(plan.Findings[0].Remedy));
        }
    }

    [Fact]
    public void A_million_pieces_and_ten_thousand_classes_are_still_planned()
    {
        var many = FirstFit.Plan(Cloth.Of("40", ("3 x 2", 1_000_000), ("7 x 5 turn", 1_000_000))).Value!;
        Assert.Empty(PlanAudit.Of(many));
        (string, int)[] classes = [.. Enumerable.Range(0, 10_001).Select(i => ($"{(i % 150) + 8}/8 x {(i / 150) + 8}/8", 1 + (i % 7)))];
        var wide = FirstFit.Plan(Cloth.Of("40", classes));
        Assert.Equal("cutting.too-much", Assert.Single(wide.Findings).Rule);
        Assert.Empty(PlanAudit.Of(wide.Value!));
    }

    [Fact]
    public void Nothing_wanted_takes_only_the_straightening()
    {
        var plan = FirstFit.Plan(Cloth.Of(ClothTerms.Usual, ("5 x 5", 0))).Value!;
        Assert.Empty(plan.Strips);
        Assert.Equal(ClothTerms.Usual.Straightening, plan.Cut);
        Assert.Equal(ProofStatus.Proved, plan.Proof.Status);
    }
}
