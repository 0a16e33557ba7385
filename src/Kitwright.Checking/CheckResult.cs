using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking;

/// <summary>What the checker has to say about a plan.</summary>
/// <param name="Findings">Empty where the plan is right. Places are path ids, or JSON pointers into the plan.</param>
/// <param name="Trace">Which piece shows in which patch; as far as the sewing could be followed.</param>
public sealed record CheckResult(ImmutableArray<Finding> Findings, Trace Trace)
{
    public bool Good => Findings.All(f => f.Weight != Weight.Fault);
}
