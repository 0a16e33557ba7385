using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>What a cutting plan assumes must be possible before anything else can be said of it.</summary>
internal static class TermsRule
{
    public static bool Check(ClothPlan cloth, FindingList findings)
    {
        if (ArePossible(cloth.Terms))
        {
            return true;
        }

        findings.Add("check.cloth.terms", cloth.Id.Value);
        return false;
    }

    public static bool ArePossible(ClothTerms terms) =>
        terms.CrossTrim.Sign >= 0
        && terms.UsableWidth > terms.CrossTrim
        && terms.Straightening.Sign >= 0
        && terms.MinimumCut.Sign >= 0
        && !terms.Increments.IsEmpty
        && terms.Increments.All(step => step.Sign > 0)
        && terms.Stages is 2 or 3
        && (terms.Table is not { } table || (table.Layers is 1 or 2 or 4 && table.SquareEvery >= 0 && table.SquaringLoss.Sign >= 0 && IsRuler(table.RulerLength)));

    private static bool IsRuler(Length length) => length.Sign > 0 && length <= Length.Inches(100);

    public static Length StripLength(ClothTerms terms) => terms.UsableWidth - terms.CrossTrim;
}
