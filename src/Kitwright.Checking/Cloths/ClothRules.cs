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
            if (!TermsRule.Check(cloth, findings))
            {
                continue;
            }

            DemandRule.Check(cloth, plan, findings);
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
        }

        DemandRule.CheckAllCut(plan, findings);
    }
}
