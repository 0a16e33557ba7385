using System.Collections.Immutable;
using Kitwright.Checking.Cloths;
using Kitwright.Checking.Designs;
using Kitwright.Checking.Exact;
using Kitwright.Checking.Finishing;
using Kitwright.Checking.Sewing;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking;

/// <summary>
/// The independent checker. It trusts nothing in a plan but the design and the size of the seam: it cuts, sews and
/// looks for itself, with its own geometry and its own arithmetic, and never throws whatever the plan contains.
/// </summary>
public static class PlanChecker
{
    public static CheckResult Check(QuiltPlan plan)
    {
        var findings = new FindingList();
        Completeness.Check(plan, findings);
        if (findings.Any)
        {
            // With holes in it, no rule could be stated.
            return new(findings.All(), Trace.None);
        }

        var effort = new Effort();
        ImmutableArray<TraceLink> links = [];
        Run("design", () => DesignRules.Check(plan.Design, findings, effort));
        Run("ids", () => IdRules.Check(plan, findings));
        if (!findings.Any)
        {
            // A design that is not sound is nothing that sewing could be held against.
            Run("sewing", () => links = SewingRules.Check(plan, findings, effort));
        }

        Run("sewing", () => CountRules.Check(plan, findings));
        Run("cloths", () => ClothRules.Check(plan, findings));
        Run("finishing", () => FinishingRules.Check(plan, findings));
        return new(findings.All(), new(links));

        void Run(string place, Action rules)
        {
            try
            {
                rules();
            }
            catch (BeyondLimits)
            {
                findings.Add("check.too-much", place);
            }
        }
    }
}
