using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;

namespace Kitwright.Checking.Kits;

/// <summary>
/// Checks a kit plan against the shelf and the request that it was made from, by its own arithmetic: every cut from
/// one bolt that holds it, every kit whole and of one lot or listed as short, every figure recomputed.
/// </summary>
public static class KitChecker
{
    /// <summary>What is wrong; empty where nothing is.</summary>
    public static ImmutableArray<Finding> Check(Shelf shelf, KitRequest request, KitPlan plan)
    {
        var findings = new FindingList();
        LoadRules.Check(shelf, plan, findings);
        BagRules.Check(request, plan, findings);
        FigureRules.Check(plan, request, findings);
        OrderRules.Check(plan, findings);
        return findings.All();
    }
}
