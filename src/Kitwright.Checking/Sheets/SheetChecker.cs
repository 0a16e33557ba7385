using System.Collections.Immutable;
using Kitwright.Checking.Exact;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;

namespace Kitwright.Checking.Sheets;

/// <summary>
/// The checker for pieces cut from sheets: the tree of cuts, counts, cost and figures, and the bound from its own whole
/// numbers. It shares nothing with the engine but the records.
/// </summary>
public static class SheetChecker
{
    /// <summary>Empty where the plan is right.</summary>
    public static ImmutableArray<Finding> Check(SheetPlan plan)
    {
        var findings = new FindingList();
        if (SheetTermsRule.Check(plan, findings) && SheetTreeRules.Check(plan, findings))
        {
            SheetCountRules.Check(plan, findings);
            SheetFigureRules.Check(plan, findings);
            try
            {
                SheetBoundRules.Check(plan, findings);
            }
            catch (BeyondLimits)
            {
                findings.Add("check.sheet.bound-too-large", "proof");
            }
        }

        return findings.All();
    }
}
