using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// Pieces that are matched to a print: strips are cut from the cloth one below the other, rooms from a strip one beside the
/// other, each large enough for its piece; every place at which one begins is a whole number of repeats from the first,
/// and a repeat is allowed to find that first place.
/// </summary>
internal static class MatchRules
{
    public static void Check(ClothPlan cloth, QuiltPlan plan, FindingList findings)
    {
        var match = plan.Fabrics.FirstOrDefault(f => f.Letter == cloth.Letter)?.Match;
        if (match is null && cloth.Terms.Match is null)
        {
            return;
        }

        if (match is null || match != cloth.Terms.Match || match is { Along: null, Across: null } || match.Along?.Sign <= 0 || match.Across?.Sign <= 0)
        {
            findings.Add("check.match.terms", cloth.Id.Value);
            return;
        }

        if (
            cloth.Terms.Straightening < (match.Along ?? Length.Zero)
            || cloth.Terms.CrossTrim < (match.Across ?? Length.Zero)
            || cloth.Terms.Table is { Layers: > 1 } or { SquareEvery: > 0 }
            || !cloth.Sections.IsEmpty
        )
        {
            findings.Add("check.match.terms", cloth.Id.Value);
        }

        Rooms(cloth, plan, findings);
        Places(cloth, match, findings);
    }

    private static void Rooms(ClothPlan cloth, QuiltPlan plan, FindingList findings)
    {
        var pieces = plan.Pieces.ToLookup(p => p.Id);
        foreach (var demand in cloth.Demand)
        {
            if (pieces[demand.Piece].FirstOrDefault() is { } piece && (demand.Width < piece.Width || demand.Height < piece.Height || demand.MayTurn))
            {
                findings.Add("check.match.room", piece.Id.Value, Say.Size(demand.Width, demand.Height), Say.AtLeast(Say.Size(piece.Width, piece.Height)), ("label", piece.Label));
            }
        }
    }

    private static void Places(ClothPlan cloth, PrintMatch match, FindingList findings)
    {
        var down = Length.Zero;
        // As they are cut: widest first, the plan's order among equals.
        foreach (var strip in cloth.Strips.OrderByDescending(s => s.Height))
        {
            // The first of equal strips begins where the one before ends; they are all whole repeats if that is one and their height is.
            if (!IsWhole(down, match.Along) || (strip.Times > 1 && !IsWhole(strip.Height, match.Along)))
            {
                findings.Add("check.match.off", strip.Id.Value);
            }

            down += strip.Height * strip.Times;
            var over = Length.Zero;
            foreach (var sub in strip.SubCuts)
            {
                if (!IsWhole(over, match.Across) || (sub.Times > 1 && !IsWhole(sub.Width, match.Across)) || sub.Stack.Any(s => s.Turned || s.Times > 1) || sub.Stack.Length > 1)
                {
                    findings.Add("check.match.off", sub.Id.Value);
                }

                over += sub.Width * sub.Times;
            }
        }
    }

    private static bool IsWhole(Length place, Length? repeat) => repeat is not { } each || (place / each).IsInteger;
}
