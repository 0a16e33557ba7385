using System.Collections.Immutable;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Samples.Edits;

namespace Kitwright.Checking.Tests;

/// <summary>Cutting plans that go wrong in one place are refused, and for the right reason.</summary>
public sealed class ClothMutantTest
{
    private const string First = "cloth/A/strip/1";

    public static Mutants Wrong { get; } = new()
    {
        // The tree of cuts
        { "one cut too many across a strip", "check.cloth.strip-too-long", p => p.EditSubCut("cloth/C/strip/4", s => s with { Times = 2 }) },
        { "strip wider than its piece", "check.cloth.strip-too-high", p => p.EditStrip(First, s => s with { Height = s.Height + Step }) },
        { "strip narrower than its piece", "check.cloth.stack-too-high", p => p.EditStrip(First, s => s with { Height = s.Height - Step }) },
        { "cut wider than its piece", "check.cloth.sub-cut-width", p => p.EditSubCut(First, s => s with { Width = s.Width + Step }) },
        { "cut narrower than its piece", "check.cloth.sub-cut-width", p => p.EditSubCut(First, s => s with { Width = s.Width - Step }) },
        { "two pieces in a cut of a plan of two stages", "check.cloth.stages", p => p.EditSubCut(First, s => s with { Stack = [s.Stack[0] with { Times = 2 }] }) },
        { "strip without cuts", "check.cloth.strip-empty", p => p.EditStrip(First, s => s with { SubCuts = [] }) },
        { "strip cut no times", "check.cloth.strip-empty", p => p.EditStrip(First, s => s with { Times = 0 }) },
        { "cut made no times", "check.cloth.sub-cut-empty", p => p.EditSubCut(First, s => s with { Times = 0 }) },
        { "cut with nothing in it", "check.cloth.sub-cut-empty", p => p.EditSubCut(First, s => s with { Stack = [] }) },
        { "cut of an unknown piece", "check.cloth.unknown-piece", p => p.EditSubCut(First, s => s with { Stack = [s.Stack[0] with { Piece = new("piece/Z1") }] }) },
        { "directional piece turned", "check.cloth.turned", p => p.EditSubCut("cloth/C/strip/1", s => s with { Width = Length.Inches(2, 1, 2), Stack = [s.Stack[0] with { Turned = true }] }) },

        // Demand and delivery
        { "one piece fewer cut", "check.cloth.pieces-short", p => p.EditSubCut(First, s => s with { Times = s.Times - 1 }) },
        { "strip left out", "check.cloth.pieces-short", p => p.EditCloth("A", c => c with { Strips = c.Strips.RemoveAt(0) }) },
        { "one more asked for", "check.cloth.demand-count", p => p.EditCloth("A", c => c with { Demand = c.Demand.SetItem(0, c.Demand[0] with { Count = 5 }) }) },
        { "one fewer asked for", "check.cloth.demand-count", p => p.EditCloth("A", c => c with { Demand = c.Demand.SetItem(0, c.Demand[0] with { Count = 3 }) }) },
        { "piece asked for in another size", "check.cloth.demand-differs", p => p.EditCloth("A", c => c with { Demand = c.Demand.SetItem(0, c.Demand[0] with { Width = c.Demand[0].Width + Step }) }) },
        { "piece that may turn in one place only", "check.cloth.demand-differs", p => p.EditPiece("A1", x => x with { MayTurn = false }) },
        { "piece asked of two cloths", "check.cloth.demand-count", p => p.EditCloth("A", c => c with { Demand = c.Demand.Add(p.Cloths[1].Demand[0]) }) },
        { "piece of a role that the cloth does not serve", "check.cloth.role", p => p.EditPiece("A1", x => x with { Role = "goose" }) },
        { "a spare that is not cut", "check.cloth.demand-count", p => p.EditPiece("A1", x => x with { Spare = 1 }) },
        { "piece of no size", "check.plan.piece", p => p.EditPiece("A1", x => x with { Width = Length.Zero }) },

        // Figures and lengths
        { "surplus understated", "check.cloth.figure", p => p.EditCloth("A", c => c with { Figures = c.Figures with { Surplus = c.Figures.Surplus + 1 } }) },
        { "strips miscounted", "check.cloth.figure", p => p.EditCloth("A", c => c with { Figures = c.Figures with { Strips = 1 } }) },
        { "ruler settings miscounted", "check.cloth.figure", p => p.EditCloth("A", c => c with { Figures = c.Figures with { StripWidths = 1 } }) },
        { "cuts across miscounted", "check.cloth.figure", p => p.EditCloth("A", c => c with { Figures = c.Figures with { SubCuts = 0 } }) },
        { "trims miscounted", "check.cloth.figure", p => p.EditCloth("A", c => c with { Figures = c.Figures with { Trims = 1 } }) },
        { "straightening forgotten", "check.cloth.cut-length", p => p.EditCloth("A", c => c with { Cut = c.Cut - c.Terms.Straightening }) },
        { "margin of half a strip", "check.cloth.margin", p => p.EditCloth("A", c => c with { Margin = c.Margin / 2 }) },
        { "margin below nothing", "check.cloth.margin", p => p.EditCloth("A", c => c with { Margin = -c.Margin }) },
        { "bought a step too little", "check.cloth.purchase", p => p.EditCloth("A", c => c with { Purchase = c.Purchase - Length.Yards(new(1, 8)) }) },
        { "bought a step too much", "check.cloth.purchase", p => p.EditCloth("A", c => c with { Purchase = c.Purchase + Length.Yards(new(1, 8)) }) },
        { "bought exactly, where the shop cuts by steps", "check.cloth.purchase", p => p.EditCloth("A", c => c with { Purchase = c.Cut + c.Margin }) },
        { "cross trim wider than the cloth", "check.cloth.terms", p => p.EditCloth("A", c => c with { Terms = c.Terms with { CrossTrim = Length.Inches(41) } }) },
        { "increment of nothing", "check.cloth.terms", p => p.EditCloth("A", c => c with { Terms = c.Terms with { Increments = [Length.Zero] } }) },
        { "no increment", "check.cloth.terms", p => p.EditCloth("A", c => c with { Terms = c.Terms with { Increments = [] } }) },
        { "four stages", "check.cloth.terms", p => p.EditCloth("A", c => c with { Terms = c.Terms with { Stages = 4 } }) },
        { "narrower cloth", "check.cloth.strip-too-long", p => p.EditCloth("C", c => c with { Terms = c.Terms with { UsableWidth = Length.Inches(39) } }) },

        // The bound
        { "bound one unit too high", "check.cloth.bound", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Bound = c.Proof.Bound + c.Proof.Unit } }) },
        { "bound one unit too low", "check.cloth.bound", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Bound = c.Proof.Bound - c.Proof.Unit } }) },
        { "bound above the plan", "check.cloth.bound-above", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Bound = c.Cut } }) },
        { "proved claimed without a proof", "check.cloth.status", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Status = ProofStatus.Proved } }) },
        { "proved by search without a search", "check.cloth.status", p => p.EditCloth("A", c => BySearch(c) with { Proof = BySearch(c).Proof with { Searched = false } }) },
        { "search that added nothing", "check.cloth.bound", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Searched = true } }) },
        { "search above the plan", "check.cloth.bound-above", p => p.EditCloth("A", c => BySearch(c) with { Proof = BySearch(c).Proof with { Bound = c.Cut } }) },
        { "duals of another demand", "check.cloth.bound-figures", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Duals = [1] } }) },
        { "dual below nothing", "check.cloth.bound-figures", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Duals = [.. c.Demand.Select(_ => -1L)] } }) },
        { "unit that does not divide the sizes", "check.cloth.bound-figures", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Unit = Length.Inches(1) } }) },
        { "unit too fine to recompute", "check.cloth.bound-too-large", p => p.EditCloth("A", c => c with { Proof = c.Proof with { Unit = new(new Rational(1, 1L << 50)) } }) },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_cutting_plan_is_refused(string name) => Wrong.MustBeRefused(name);

    /// <summary>What a search adds to a bound is its word, as long as it is said.</summary>
    [Fact]
    public void A_search_may_close_the_gap() =>
        Assert.Equal([], PlanChecker.Check(Sampler.Plan.EditCloth("A", BySearch)).Findings.Select(f => f.Rule));

    private static ClothPlan BySearch(ClothPlan cloth) =>
        cloth with
        {
            Proof = cloth.Proof with
            {
                Status = ProofStatus.ProvedBySearch,
                Bound = cloth.Cut - cloth.Terms.Straightening,
                Searched = true,
            },
        };
}
