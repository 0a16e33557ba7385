using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Finishing;

/// <summary>What is printed as needed is what the plans buy: one entry for each cloth and one for the backing.</summary>
internal static class NeedRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        var open = plan.Needs.Lengths.ToList();
        foreach (var cloth in plan.Cloths)
        {
            var need = open.FirstOrDefault(n => n.Kind != NeedKind.Backing && n.Letter == cloth.Letter && n.Roles.SequenceEqual(cloth.Roles));
            if (need is null)
            {
                findings.Add("check.needs.missing", cloth.Id.Value);
                continue;
            }

            open.Remove(need);
            Compare(need, cloth.Purchase, cloth.Fabric, cloth.Id.Value, findings);
        }

        if (open.FirstOrDefault(n => n.Kind == NeedKind.Backing) is { } backing)
        {
            open.Remove(backing);
            var fabric = plan.Fabrics.FirstOrDefault(f => f.Letter == backing.Letter);
            if (fabric is null)
            {
                findings.Add("check.fabric.letter", "backing", ("letter", backing.Letter));
            }

            Compare(backing, plan.Backing.Purchase, fabric?.Number, "backing", findings);
        }
        else
        {
            findings.Add("check.needs.missing", "backing");
        }

        foreach (var extra in open)
        {
            findings.Add("check.needs.extra", extra.Letter, ("letter", extra.Letter));
        }
    }

    private static void Compare(Need need, Length purchase, string? fabric, string place, FindingList findings)
    {
        if (need.Length != purchase)
        {
            findings.Add(
                "check.needs.length",
                place,
                Say.Inches(need.Length),
                Say.Inches(purchase),
                ("letter", need.Letter)
            );
        }

        if (need.Fabric != fabric)
        {
            findings.Add("check.needs.fabric", place, ("letter", need.Letter));
        }
    }
}
