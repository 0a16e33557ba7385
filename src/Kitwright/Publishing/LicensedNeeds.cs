using System.Collections.Immutable;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Publishing;

/// <summary>What a kit of somebody else's pattern holds: the lengths that were typed in, in the order of the roles.</summary>
public static class LicensedNeeds
{
    /// <summary>Null where the pattern is the shop's own, or no length was typed in.</summary>
    public static Needs? Of(Quilt quilt, Colorway colorway)
    {
        if (quilt.Licensed is not { Lengths.Count: > 0 } license)
        {
            return null;
        }

        var roles = quilt.Roles.Select(r => r.Id).Where(license.Lengths.ContainsKey).ToImmutableArray();
        return new(
            [
                .. roles.Select(
                    (role, i) =>
                        new Need(Letters.Name(i), KindOf(quilt, role), [role], colorway.Fabrics.GetValueOrDefault(role), license.Lengths[role])
                ),
            ],
            null
        );
    }

    private static NeedKind KindOf(Quilt quilt, string role) =>
        role == quilt.Backing.Role ? NeedKind.Backing
        : role == quilt.Binding.Role ? NeedKind.Binding
        : NeedKind.Top;
}
