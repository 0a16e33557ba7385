using System.Collections.Immutable;
using System.Diagnostics;
using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;

namespace Kitwright.App.Commands;

/// <summary>A list of pieces cut from one cloth of open length by the engine that also cuts quilts.</summary>
internal static class RollCutting
{
    public static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(PieceList list, CutTerms terms, CancellationToken cancel)
    {
        var started = Stopwatch.GetTimestamp();
        var planned = ClothCutter.Cut(ProblemOf(list, terms), terms.Budget, cancel);
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        var findings = planned.Findings.Select(f => f with { Place = PlaceOf(f.Place, list) }).ToImmutableArray();
        return (planned.Value is { } plan ? Outcome(plan, terms, seconds) : null, findings);
    }

    private static ClothProblem ProblemOf(PieceList list, CutTerms terms) =>
        new(
            new("cloth/A"),
            "A",
            [],
            null,
            new(
                terms.Width!.Value,
                terms.Trim,
                terms.Straightening,
                Stages: 2,
                terms.Increments.IsEmpty ? [Length.Inch] : terms.Increments,
                MinimumCut: Length.Zero
            ),
            [.. list.Pieces.Select((p, index) => new ClothDemand(IdOf(index), p.Label, p.Width, p.Height, p.Count, p.MayTurn))],
            SpareStrips: 0,
            terms.Goal != "length" && !terms.Increments.IsEmpty ? CutGoal.ByTheStep : CutGoal.ByTheInch
        );

    private static PathId IdOf(int index) => new PathId("piece").Child("line", index);

    /// <summary>A finding about a piece stands at its line in the list.</summary>
    private static string PlaceOf(string place, PieceList list)
    {
        var index = Enumerable.Range(0, list.Pieces.Length).FirstOrDefault(i => IdOf(i).Value == place, -1);
        return index < 0 ? "--width" : $"line {list.Pieces[index].Line}";
    }

    /// <summary>Without an increment just what is cut is bought.</summary>
    private static ClothPlan Bought(ClothPlan plan, CutTerms terms) => terms.Increments.IsEmpty ? plan with { Purchase = plan.Cut } : plan;

    private static CutOutcome Outcome(ClothPlan plan, CutTerms terms, double seconds)
    {
        Measured Of(Length length) => new(length, terms.Measure.Unit);
        var demand = plan.Demand.ToDictionary(d => d.Piece);
        SubCutOutcome SubCutOf(StripCut strip, SubCut cut)
        {
            var piece = demand[cut.Stack[0].Piece];
            var turned = cut.Stack[0].Turned;
            var (width, height) = turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
            return new(piece.Label, Of(width), Of(height), 1, cut.Times, turned, Of(cut.Width), height < strip.Height ? 1 : 0, []);
        }

        return new(
            plan.Proof.Status switch
            {
                ProofStatus.Proved => "proved",
                ProofStatus.ProvedBySearch => "provedBySearch",
                _ => "within",
            },
            Of(plan.Cut),
            Of(plan.Terms.Straightening + plan.Proof.Bound),
            terms.Increments.IsEmpty ? null : Of(plan.Purchase),
            Cost: null,
            CostBound: null,
            Sheets: 1,
            SheetsBound: null,
            Math.Round(seconds, 3),
            plan.Proof.Method,
            plan.Proof.Work,
            plan.Proof.StoppedBy,
            Short: [],
            ShortIsProved: false,
            [
                new(
                    Cloth: null,
                    "across",
                    Of(plan.Terms.UsableWidth),
                    Of(plan.Cut),
                    1,
                    [.. plan.Strips.Select(s => new StripOutcome(Of(s.Height), 1, s.Times, [.. s.SubCuts.Select(c => SubCutOf(s, c))]))],
                    terms.Keep is { } least
                        ? [.. Leftovers.Of(Bought(plan, terms), least).Select(left => new LeftoverOutcome(Of(left.Width), Of(left.Height), left.Count))]
                        : []
                ),
            ]
        );
    }
}
