using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.App.Commands;

/// <summary>A plan of a cloth of open length as <c>cut</c> answers it.</summary>
internal sealed class RollOutcome(PieceList list, ClothPlan plan, CutTerms terms)
{
    private readonly Dictionary<PathId, int> index = Enumerable.Range(0, list.Pieces.Length).ToDictionary(RollCutting.IdOf);
    private readonly Dictionary<PathId, ClothDemand> demand = plan.Demand.ToDictionary(d => d.Piece);

    public CutOutcome Of(double seconds)
    {
        var panels = plan.Panels?.Sum(panel => panel.Times);
        var (length, bound) = (plan.Cut, plan.Terms.Straightening + plan.Proof.Bound);
        int? fewest = null;
        var status = plan.Proof.Status switch
        {
            ProofStatus.Proved => "proved",
            ProofStatus.ProvedBySearch => "provedBySearch",
            _ => "within",
        };
        if (panels is { } count && terms.Panel is { } panel)
        {
            // Whole panels are taken: the strips' bound tells of them what it tells over a panel's length.
            fewest = (int)(plan.Proof.Bound / panel).Ceiling();
            (length, bound) = (panel * count, panel * fewest.Value);
            status = fewest == count ? plan.Proof.Searched ? "provedBySearch" : "proved" : "within";
        }

        return new(
            status,
            In(length),
            In(bound),
            terms.Increments.IsEmpty ? null : In(plan.Purchase),
            Cost: null,
            CostBound: null,
            Sheets: panels ?? 1,
            fewest,
            Math.Round(seconds, 3),
            plan.Proof.Method,
            plan.Proof.Work,
            plan.Proof.StoppedBy,
            Short: [],
            ShortIsProved: false,
            plan.Panels is { } cuts ? [.. cuts.Select(Panel)] : [Whole()]
        );
    }

    private ClothCut Whole() =>
        new(Cloth: null, "across", In(plan.Terms.UsableWidth), In(plan.Cut), 1, [.. plan.Strips.Select(strip => StripOf(strip, strip.Times))], Left(Bought));

    private ClothCut Panel(PanelCut cut)
    {
        var strips = plan.Strips.ToDictionary(strip => strip.Id);
        ImmutableArray<StripCut> own = [.. cut.Strips.Select(strip => strips[strip.Strip] with { Times = strip.Times })];
        var alone = plan with { Strips = own, Cut = own.Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Times)), Purchase = terms.Panel!.Value, Panels = null };
        return new("panel", "across", In(plan.Terms.UsableWidth), In(terms.Panel!.Value), cut.Times, [.. own.Select(strip => StripOf(strip, strip.Times))], Left(alone, cut.Times));
    }

    /// <summary>Without an increment just what is cut is bought.</summary>
    private ClothPlan Bought => terms.Increments.IsEmpty ? plan with { Purchase = plan.Cut } : plan;

    private ImmutableArray<LeftoverOutcome> Left(ClothPlan of, int times = 1) =>
        terms.Keep is { } least ? [.. Leftovers.Of(of, least).Select(left => new LeftoverOutcome(In(left.Width), In(left.Height), left.Count * times))] : [];

    private StripOutcome StripOf(StripCut strip, int times) => new(In(strip.Height), 1, times, [.. strip.SubCuts.Select(cut => SubCutOf(strip, cut))]);

    private SubCutOutcome SubCutOf(StripCut strip, SubCut cut)
    {
        var id = cut.Stack[0].Piece;
        var piece = list.Pieces[index[id]];
        // A piece that is pinned to the one way in which it fits a panel may lie turned without being turned by the plan.
        var turned = cut.Stack[0].Turned != (demand[id].Width == piece.Height && demand[id].Height == piece.Width && piece.Width != piece.Height);
        var (width, height) = turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
        var trims = (height < strip.Height ? 1 : 0) + (width < cut.Width ? 1 : 0);
        return new(piece.Label, In(width), In(height), 1, cut.Times, turned, In(cut.Width), trims, []);
    }

    private Measured In(Length length) => new(length, terms.Measure.Unit);
}
