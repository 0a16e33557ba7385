using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>Which fabric is which: the letters with their roles and the stock fabrics that a colorway puts there.</summary>
internal sealed record SwatchKey(ImmutableArray<PlanFabric> Fabrics, ImmutableArray<Finding> Findings)
{
    /// <summary>Roles by letter: one each, or one per fabric where the shop cuts one length per fabric.</summary>
    /// <remarks>
    /// The backing keeps a length of its own: its panels are not strips. So does a role whose pieces are matched to the
    /// print: its strips are whole repeats.
    /// </remarks>
    public static ImmutableArray<ImmutableArray<string>> Groups(Quilt quilt, Colorway? colorway, bool onePerFabric)
    {
        var used = RoleUses.Of(quilt).Select(use => use.Role).ToHashSet(StringComparer.Ordinal);
        var roles = quilt.Roles.Select(r => r.Id).Where(used.Contains);
        if (!onePerFabric || colorway is null)
        {
            return [.. roles.Select(r => ImmutableArray.Create(r))];
        }

        var matched = quilt.Roles.Where(r => r.Matched).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. roles
                .GroupBy(r => r == quilt.Backing.Role ? "backing " + r : matched.Contains(r) ? "matched " + r : colorway.Fabrics.GetValueOrDefault(r, "role " + r))
                .Select(g => g.ToImmutableArray()),
        ];
    }

    public static SwatchKey Of(Quilt quilt, Colorway? colorway, ImmutableArray<Fabric> shelf, Letters letters, PrintRoles prints)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var byNumber = shelf.ToDictionary(f => f.Number, StringComparer.OrdinalIgnoreCase);
        var names = quilt.Roles.ToDictionary(r => r.Id);
        var key = letters.Groups.Select(roles =>
        {
            var role = names[roles[0]];
            var number = colorway?.Fabrics.GetValueOrDefault(role.Id);
            Fabric? fabric = null;
            if (number is not null && !byNumber.TryGetValue(number, out fabric) && shelf.Length > 0)
            {
                findings.Add(
                    Finding.NoteOf(
                        "plan.fabric-unknown",
                        $"colorway/{colorway!.Name}/{role.Id}",
                        ("number", number),
                        ("role", role.Name)
                    )
                );
            }

            return new PlanFabric(
                letters.Of(role.Id),
                roles,
                number,
                fabric?.Name ?? string.Join(", ", roles.Select(r => names[r].Name)),
                fabric?.Color ?? PlainColors.Of(role)
            )
            {
                Direction = prints.Direction(role.Id),
                Match = prints.Of(role.Id).Match,
                PanelLength = prints.Of(role.Id).Panel,
                // Where several roles share the length they share the fabric.
                TwoSided = prints.Of(role.Id).TwoSided,
            };
        });
        return new([.. key], findings.ToImmutable());
    }
}
