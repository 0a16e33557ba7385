using Kitwright.Checking.Cloths;
using Kitwright.Plans;

namespace Kitwright.Checking;

/// <summary>An id names one thing only, a label one stack.</summary>
internal static class IdRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        Once(plan.Pieces.Select(p => p.Id.Value), "check.plan.id-twice", findings);
        Once(plan.Pieces.Select(p => p.Label), "check.plan.label-twice", findings);
        Once(plan.Fabrics.Select(f => f.Letter), "check.plan.letter-twice", findings);
        Once(plan.Design.Blocks.Select(b => b.Id), "check.plan.id-twice", findings);
        Once(plan.Design.Placements.Select(p => p.Id.Value), "check.plan.id-twice", findings);
        Once(
            plan.Design.Patches.Concat(plan.Design.Blocks.SelectMany(b => b.Patches)).Select(p => p.Id.Value),
            "check.plan.id-twice",
            findings
        );
        Once(
            plan.Cloths.Select(c => c.Id.Value)
                .Concat(plan.Cloths.SelectMany(SectionRules.AllStrips).Select(s => s.Id.Value))
                .Concat(plan.Cloths.SelectMany(SectionRules.AllStrips).SelectMany(s => s.SubCuts).Select(s => s.Id.Value)),
            "check.plan.id-twice",
            findings
        );
    }

    private static void Once(IEnumerable<string> names, string rule, FindingList findings)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!seen.Add(name))
            {
                findings.Add(rule, name);
            }
        }
    }
}
