using Kitwright.Checking.Exact;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>The cutting plans, one length of fabric at a time.</summary>
internal static class ClothRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        foreach (var cloth in plan.Cloths)
        {
            if (CheckAlone(cloth, findings))
            {
                DemandRule.Check(cloth, plan, findings);
                MatchRules.Check(cloth, plan, findings);
                PanelRules.Check(cloth, plan, findings);
            }
        }

        DemandRule.CheckAllCut(plan, findings);
    }

    /// <summary>What can be said without the quilt; false where the terms are impossible.</summary>
    public static bool CheckAlone(ClothPlan cloth, FindingList findings)
    {
        if (!TermsRule.Check(cloth, findings))
        {
            return false;
        }

        SectionRules.Check(cloth, findings);
        if (StripRules.Check(cloth, findings))
        {
            DeliveryRule.Check(cloth, findings);
            FigureRules.Check(cloth, findings);
        }

        LengthRules.Check(cloth, findings);
        try
        {
            BoundRules.Check(cloth, findings);
        }
        catch (BeyondLimits)
        {
            findings.Add("check.cloth.bound-too-large", cloth.Id.Value);
        }

        return true;
    }
}
