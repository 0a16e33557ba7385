using System.Numerics;
using Kitwright.Cutting.Sheets;
using Kitwright.Plans;

namespace Kitwright.Checking.Sheets;

/// <summary>Every piece is cut as often as it is asked for or stated as short, and no sheet is used more often than it is there.</summary>
internal static class SheetCountRules
{
    public static void Check(SheetPlan plan, FindingList findings)
    {
        var cut = new Dictionary<PathId, (BigInteger Count, int FewestLayers)>();
        foreach (var sheet in plan.Cuts)
        {
            foreach (var strip in sheet.Strips)
            {
                foreach (var sub in strip.SubCuts)
                {
                    foreach (var piece in sub.Stack)
                    {
                        var before = cut.GetValueOrDefault(piece.Piece, (0, strip.Layers));
                        var more = (BigInteger)sheet.Times * strip.Times * strip.Layers * sub.Times * piece.Times;
                        cut[piece.Piece] = (before.Count + more, Math.Min(before.FewestLayers, strip.Layers));
                    }
                }
            }
        }

        var wanted = plan.Problem.Demand.Select(demand => demand.Piece).ToHashSet();
        if (plan.Short.Select(s => s.Piece).Distinct().Count() != plan.Short.Length || plan.Short.Any(s => s.Count <= 0 || !wanted.Contains(s.Piece)))
        {
            findings.Add("check.sheet.short", "short");
        }

        foreach (var demand in plan.Problem.Demand)
        {
            BigInteger missing = plan.Short.Where(s => s.Piece == demand.Piece).Sum(s => (long)s.Count);
            var (count, layers) = cut.GetValueOrDefault(demand.Piece, (0, 1));
            var surplus = count + missing - demand.Count;
            // Only what a fold gives beyond the demand may be over.
            if (surplus < 0 || surplus >= layers || (missing > 0 && surplus != 0))
            {
                findings.Add("check.sheet.count", demand.Piece.Value, Say.Count(count), Say.Count(demand.Count - missing));
            }
        }

        foreach (var sheet in plan.Problem.Sheets)
        {
            var used = plan.Cuts.Where(c => c.Sheet == sheet.Id).Aggregate(BigInteger.Zero, (sum, c) => sum + c.Times);
            if (used > (sheet.Count ?? int.MaxValue))
            {
                findings.Add("check.sheet.supply", sheet.Id.Value, Say.Count(used), Say.AtMost(Say.Count(sheet.Count ?? int.MaxValue)));
            }
        }
    }
}
