using System.Collections.Immutable;
using Kitwright.Checking.Cloths;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking;

/// <summary>The checker for one cutting plan that belongs to no quilt: its cuts, counts, lengths and bound.</summary>
public static class ClothChecker
{
    /// <summary>Empty where the plan is right.</summary>
    public static ImmutableArray<Finding> Check(ClothPlan cloth)
    {
        var findings = new FindingList();
        ClothRules.CheckAlone(cloth, findings);
        return findings.All();
    }
}
