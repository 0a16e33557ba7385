using Kitwright.Plans;

namespace Kitwright.Checking.Finishing;

/// <summary>What is not sewn into the top: fabrics and letters, binding, backing, batting, and what is bought.</summary>
internal static class FinishingRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        if (plan.Seam.Sign <= 0 || plan.RulerStep.Sign <= 0)
        {
            findings.Add("check.plan.steps", "/seam");
        }

        FabricRules.Check(plan, findings);
        BindingRules.Check(plan, findings);
        BackingRules.Check(plan, findings);
        NeedRules.Check(plan, findings);
    }
}
