using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Tests.Cutting;

/// <summary>
/// Reads a cutting plan as a person at the table would and lists everything that is wrong with it. It shares no code
/// with the methods under test.
/// </summary>
internal static class PlanAudit
{
    public static ImmutableArray<string> Of(ClothPlan plan)
    {
        var faults = ImmutableArray.CreateBuilder<string>();
        void Must(bool holds, string rule)
        {
            if (!holds)
            {
                faults.Add(rule);
            }
        }

        var demand = plan.Demand.ToDictionary(d => d.Piece);
        var got = plan.Demand.ToDictionary(d => d.Piece, _ => 0);
        var (sum, subCuts, trims) = (Length.Zero, 0, 0);
        var (lastHeight, number) = ((Length?)null, 0);
        foreach (var strip in plan.Strips)
        {
            Must(strip.Id.Value == $"{plan.Id}/strip/{++number}", "strip id");
            Must(strip.Times > 0 && strip.Height.Sign > 0 && strip.SubCuts.Length > 0, "empty strip");
            Must(lastHeight is null || strip.Height <= lastHeight, "highest strips first");
            lastHeight = strip.Height;
            sum += strip.Height * strip.Times;
            var (used, highest, cut) = (Length.Zero, Length.Zero, 0);
            foreach (var sub in strip.SubCuts)
            {
                Must(sub.Id.Value == $"{strip.Id}/cut/{++cut}", "cut id");
                Must(sub.Stack.Length == 1 && sub.Stack[0].Times == 1, "two stages");
                var piece = demand[sub.Stack[0].Piece];
                var turned = sub.Stack[0].Turned;
                Must(!turned || piece.MayTurn, "turned against the grain");
                Must(!turned || piece.Width != piece.Height, "a square is never turned");
                var (width, height) = turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
                Must(sub.Width == width, "width of sub-cut");
                Must(height <= strip.Height, "higher than its strip");
                highest = Length.Max(highest, height);
                used += sub.Width * sub.Times;
                got[piece.Piece] += strip.Times * sub.Times;
                subCuts += strip.Times * sub.Times;
                trims += height < strip.Height ? strip.Times * sub.Times : 0;
            }

            Must(used <= plan.Terms.StripLength, "longer than the strip");
            Must(highest == strip.Height, "strip higher than its pieces");
        }

        Must(plan.Demand.All(d => got[d.Piece] >= d.Count), "too few pieces");
        Must(plan.Cut == plan.Terms.Straightening + sum, "length");
        Must(plan.Purchase == plan.Terms.Purchase(plan.Cut + plan.Margin), "purchase");
        Must(plan.Proof.Bound <= sum, "bound above length");
        Must(plan.Proof.Status == ProofStatus.Within || plan.Proof.Bound == sum, "proved without proof");
        Must(plan.Proof.Searched == (plan.Proof.Status == ProofStatus.ProvedBySearch) || plan.Proof.Status == ProofStatus.Within, "whose word");
        var figures = new ClothFigures(
            plan.Strips.Select(s => s.Height).Distinct().Count(),
            plan.Strips.Sum(s => s.Times),
            subCuts,
            trims,
            got.Values.Sum() - plan.Demand.Sum(d => d.Count)
        );
        Must(plan.Figures == figures, "figures");
        return faults.ToImmutable();
    }
}
