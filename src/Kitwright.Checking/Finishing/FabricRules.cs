using Kitwright.Plans;

namespace Kitwright.Checking.Finishing;

/// <summary>The swatch key: each role has one fabric, and letters mean the same everywhere.</summary>
internal static class FabricRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        var byLetter = plan.Fabrics.ToLookup(f => f.Letter, StringComparer.Ordinal);
        var byRole = plan.Fabrics.SelectMany(f => f.Roles.Select(r => (Role: r, f.Letter))).ToLookup(p => p.Role, p => p.Letter);
        foreach (var role in byRole.Where(r => r.Count() > 1))
        {
            findings.Add("check.fabric.role-twice", role.Key, ("role", role.Key));
        }

        foreach (var cloth in plan.Cloths)
        {
            var fabric = byLetter[cloth.Letter].FirstOrDefault();
            if (fabric is null || fabric.Number != cloth.Fabric || cloth.Roles.Any(r => !fabric.Roles.Contains(r)))
            {
                findings.Add("check.fabric.letter", cloth.Id.Value, ("letter", cloth.Letter));
            }
        }

        foreach (var piece in plan.Pieces)
        {
            var letter = byRole[piece.Role].FirstOrDefault();
            if (letter is null)
            {
                findings.Add("check.fabric.role-missing", piece.Id.Value, ("role", piece.Role));
            }
            else if (!piece.Label.StartsWith(letter, StringComparison.Ordinal))
            {
                findings.Add(
                    "check.fabric.label",
                    piece.Id.Value,
                    Say.Names([piece.Label]),
                    Say.Names([letter]),
                    ("label", piece.Label)
                );
            }
        }
    }
}
