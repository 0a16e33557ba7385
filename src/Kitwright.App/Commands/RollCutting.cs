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
    public static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(PieceList list, RollTerms terms, CancellationToken cancel)
    {
        var started = Stopwatch.GetTimestamp();
        var planned = ClothCutter.Cut(ProblemOf(list, terms), terms.Budget, cancel);
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        var findings = planned.Findings.Select(f => f with { Place = PlaceOf(f.Place, list) }).ToImmutableArray();
        return (planned.Value is { } plan ? Outcome(plan, terms, seconds) : null, findings);
    }

    private static ClothProblem ProblemOf(PieceList list, RollTerms terms) =>
        new(
            new("cloth/A"),
            "A",
            [],
            null,
            new(
                terms.Width,
                terms.Trim,
                terms.Straightening,
                Stages: 2,
                terms.Increments.IsEmpty ? [Length.Inch] : terms.Increments,
                MinimumCut: Length.Zero
            ),
            [.. list.Pieces.Select((p, index) => new ClothDemand(IdOf(index), p.Label, p.Width, p.Height, p.Count, p.MayTurn))],
            SpareStrips: 0,
            terms.ByTheStep && !terms.Increments.IsEmpty ? CutGoal.ByTheStep : CutGoal.ByTheInch
        );

    private static PathId IdOf(int index) => new PathId("piece").Child("line", index);

    /// <summary>A finding about a piece stands at its line in the list.</summary>
    private static string PlaceOf(string place, PieceList list)
    {
        var index = Enumerable.Range(0, list.Pieces.Length).FirstOrDefault(i => IdOf(i).Value == place, -1);
        return index < 0 ? "--width" : $"line {list.Pieces[index].Line}";
    }

    private static CutOutcome Outcome(ClothPlan plan, RollTerms terms, double seconds)
    {
        Measured Of(Length length) => new(length, terms.Measure.Unit);
        var demand = plan.Demand.ToDictionary(d => d.Piece);
        SubCutOutcome SubCutOf(StripCut strip, SubCut cut)
        {
            var piece = demand[cut.Stack[0].Piece];
            var turned = cut.Stack[0].Turned;
            var (width, height) = turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
            return new(piece.Label, Of(width), Of(height), cut.Times, turned, height < strip.Height ? 1 : 0);
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
            Math.Round(seconds, 3),
            plan.Proof.Method,
            plan.Proof.Work,
            plan.Proof.StoppedBy,
            [
                new(
                    Of(plan.Terms.UsableWidth),
                    Of(plan.Cut),
                    1,
                    [.. plan.Strips.Select(s => new StripOutcome(Of(s.Height), s.Times, [.. s.SubCuts.Select(c => SubCutOf(s, c))]))]
                ),
            ]
        );
    }
}
