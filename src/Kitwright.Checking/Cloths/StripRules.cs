using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// The tree of cuts: strips right across the width, sub-cuts right across a strip, stacks inside a sub-cut; each part
/// must hold what is cut from it.
/// </summary>
internal static class StripRules
{
    /// <summary>False where counts cannot be trusted, so that nothing should be counted from them.</summary>
    public static bool Check(ClothPlan cloth, FindingList findings)
    {
        var demand = cloth.Demand.ToLookup(d => d.Piece);
        var countable = true;
        foreach (var strip in SectionRules.AllStrips(cloth))
        {
            if (strip.Height.Sign <= 0 || strip.Times <= 0 || strip.SubCuts.IsEmpty)
            {
                findings.Add("check.cloth.strip-empty", strip.Id.Value);
                countable = false;
                continue;
            }

            var along = Length.Zero;
            var highest = Length.Zero;
            foreach (var sub in strip.SubCuts)
            {
                if (sub.Width.Sign <= 0 || sub.Times <= 0 || sub.Stack.IsEmpty || sub.Stack.Any(p => p.Times <= 0))
                {
                    findings.Add("check.cloth.sub-cut-empty", sub.Id.Value);
                    countable = false;
                    continue;
                }

                along += sub.Width * sub.Times;
                if (StackHeight(cloth, sub, demand, findings) is { } height)
                {
                    highest = Length.Max(highest, height);
                    if (height > strip.Height)
                    {
                        findings.Add(
                            "check.cloth.stack-too-high",
                            sub.Id.Value,
                            Say.Inches(height),
                            Say.AtMost(Say.Inches(strip.Height))
                        );
                    }
                }
                else
                {
                    countable = false;
                }
            }

            Along(cloth, strip, along, findings);
            if (countable && highest < strip.Height)
            {
                findings.Add("check.cloth.strip-too-high", strip.Id.Value, Say.Inches(strip.Height), Say.Inches(highest));
            }
        }

        return countable;
    }

    private static void Along(ClothPlan cloth, StripCut strip, Length along, FindingList findings)
    {
        var room = TermsRule.StripLength(cloth.Terms);
        if (along > room)
        {
            findings.Add("check.cloth.strip-too-long", strip.Id.Value, Say.Inches(along), Say.AtMost(Say.Inches(room)));
        }
    }

    /// <summary>The height of a stack, each piece in an orientation that it may have; null for an unknown piece.</summary>
    private static Length? StackHeight(
        ClothPlan cloth,
        SubCut sub,
        ILookup<PathId, ClothDemand> demand,
        FindingList findings
    )
    {
        var height = Length.Zero;
        var widest = Length.Zero;
        foreach (var entry in sub.Stack)
        {
            if (demand[entry.Piece].FirstOrDefault() is not { } piece)
            {
                findings.Add("check.cloth.unknown-piece", sub.Id.Value, ("piece", entry.Piece.Value));
                return null;
            }

            if (entry.Turned && !piece.MayTurn)
            {
                findings.Add("check.cloth.turned", sub.Id.Value, ("label", piece.Label));
            }

            var (w, h) = entry.Turned ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
            widest = Length.Max(widest, w);
            height += h * entry.Times;
        }

        if (widest != sub.Width)
        {
            findings.Add("check.cloth.sub-cut-width", sub.Id.Value, Say.Inches(sub.Width), Say.Inches(widest));
        }

        if (cloth.Terms.Stages == 2 && (sub.Stack.Length > 1 || sub.Stack[0].Times > 1))
        {
            findings.Add("check.cloth.stages", sub.Id.Value);
        }

        return height;
    }
}
