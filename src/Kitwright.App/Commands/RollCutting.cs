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
        var planned = Planned(list, terms, cancel);
        var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        var findings = planned.Findings.Select(f => f with { Place = PlaceOf(f.Place, list) }).ToImmutableArray();
        return (planned.Value is { } plan ? new RollOutcome(list, plan, terms).Of(seconds) : null, findings);
    }

    private static Checked<ClothPlan> Planned(PieceList list, CutTerms terms, CancellationToken cancel)
    {
        Checked<ClothPlan> Cut(ClothProblem problem) => ClothCutter.Cut(problem, terms.Budget, cancel);
        if (terms.RepeatAcross is { } wide && wide > terms.Width - terms.Trim)
        {
            return Checked<ClothPlan>.Failed(Finding.Of("cutlist.repeat-too-wide", "--repeat-across", ("repeat", new Measured(wide, terms.Measure.Unit).ToString()), ("width", new Measured(terms.Width!.Value - terms.Trim, terms.Measure.Unit).ToString())));
        }

        ImmutableArray<Finding> nothing = [];
        if ((terms.RepeatAlong ?? terms.RepeatAcross) is null)
        {
            nothing =
            [
                .. list.Pieces.Index().Where(p => p.Item.Matched || terms.MatchAll).Select(p => Finding.NoteOf("cutlist.match-nothing", IdOf(p.Index).Value, ("label", p.Item.Label))),
            ];
        }

        var all = Enumerable.Range(0, list.Pieces.Length).ToArray();
        var matched = nothing.IsEmpty && (terms.RepeatAlong ?? terms.RepeatAcross) is not null ? all.Where(i => list.Pieces[i].Matched || terms.MatchAll).ToArray() : [];
        var planned =
            terms.Panel is { } panel ? PanelWay.Cut(ProblemOf(list, all, terms, terms.Straightening), panel, Cut)
            : matched.Length == 0 ? Cut(ProblemOf(list, all, terms, terms.Straightening))
            : MatchedFirst(list, matched, [.. all.Except(matched)], terms, Cut);
        return planned with { Findings = [.. nothing, .. planned.Findings] };
    }

    /// <summary>
    /// Pieces that are matched come first, on strips of their own, so that each begins at a whole repeat from the end; what
    /// is not follows as from a cloth that begins there.
    /// </summary>
    private static Checked<ClothPlan> MatchedFirst(PieceList list, int[] matched, int[] rest, CutTerms terms, Func<ClothProblem, Checked<ClothPlan>> cut)
    {
        var first = cut(ProblemOf(list, matched, terms, terms.Straightening));
        if (first.Value is not { } before || rest.Length == 0)
        {
            return first;
        }

        var second = cut(ProblemOf(list, rest, terms, before.Cut));
        if (second.Value is not { } after)
        {
            return second with { Findings = [.. first.Findings, .. second.Findings] };
        }

        var (one, two) = (before.Proof, after.Proof);
        var status =
            one.Status == ProofStatus.Proved && two.Status == ProofStatus.Proved ? ProofStatus.Proved
            : one.Status == ProofStatus.Within || two.Status == ProofStatus.Within ? ProofStatus.Within
            : ProofStatus.ProvedBySearch;
        return new(
            after with
            {
                Terms = before.Terms,
                Demand = [.. before.Demand, .. after.Demand],
                Strips = [.. before.Strips, .. after.Strips],
                Proof = two with { Status = status, Bound = one.Bound + two.Bound, Work = one.Work + two.Work, StoppedBy = one.StoppedBy == "done" ? two.StoppedBy : one.StoppedBy },
            },
            [.. first.Findings, .. second.Findings]
        );
    }

    private static ClothProblem ProblemOf(PieceList list, int[] some, CutTerms terms, Length straightening) =>
        new(
            new("cloth/A"),
            "A",
            [],
            null,
            new(
                terms.Width!.Value,
                terms.Trim,
                straightening,
                Stages: 2,
                terms.Panel is { } panel ? [panel]
                    : terms.Increments.IsEmpty ? [Length.Inch]
                    : terms.Increments,
                MinimumCut: Length.Zero
            )
            {
                Panel = terms.Panel,
            },
            [.. some.Select(index => DemandOf(list.Pieces[index], index, terms))],
            SpareStrips: 0,
            terms.Goal != "length" && !(terms.Increments.IsEmpty && terms.Panel is null) ? CutGoal.ByTheStep : CutGoal.ByTheInch
        );

    /// <summary>A matched piece asks for its room of whole repeats; one that goes into a panel one way round only lies so.</summary>
    private static ClothDemand DemandOf(ListedPiece piece, int index, CutTerms terms)
    {
        var (width, height, mayTurn) = (piece.Width, piece.Height, piece.MayTurn);
        if (piece.Matched || terms.MatchAll)
        {
            var strip = terms.Width!.Value - terms.Trim;
            var room = terms.RepeatAcross is { } across ? width.RoundUpTo(across) : width;
            // One that with its repeats fills more than a strip has it to itself.
            width = room > strip && width <= strip ? strip : room;
            height = terms.RepeatAlong is { } along ? height.RoundUpTo(along) : height;
            mayTurn = mayTurn && (terms.RepeatAlong ?? terms.RepeatAcross) is null;
        }

        if (mayTurn && terms.Panel is { } panel && Length.Max(width, height) > panel)
        {
            (width, height, mayTurn) = height > panel ? (height, width, false) : (width, height, false);
        }

        return new(IdOf(index), piece.Label, width, height, piece.Count, mayTurn);
    }

    public static PathId IdOf(int index) => new PathId("piece").Child("line", index);

    /// <summary>A finding about a piece stands at its line in the list.</summary>
    private static string PlaceOf(string place, PieceList list)
    {
        var index = Enumerable.Range(0, list.Pieces.Length).FirstOrDefault(i => IdOf(i).Value == place, -1);
        return index < 0 ? place.StartsWith("--", StringComparison.Ordinal) ? place : "--width" : $"line {list.Pieces[index].Line}";
    }
}
