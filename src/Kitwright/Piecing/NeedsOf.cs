using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>The lengths that a kit holds, from the plan of its cloths.</summary>
internal static class NeedsOf
{
    public static Needs Plan(Quilt quilt, ImmutableArray<ClothPlan> cloths, Pieced pieced, ImmutableArray<PlanFabric> fabrics)
    {
        var lengths = ImmutableArray.CreateBuilder<Need>();
        foreach (var fabric in fabrics)
        {
            if (cloths.FirstOrDefault(c => c.Letter == fabric.Letter) is { } cloth)
            {
                var kind = fabric.Roles is [var only] && only == quilt.Binding.Role ? NeedKind.Binding : NeedKind.Top;
                lengths.Add(new(fabric.Letter, kind, fabric.Roles, fabric.Number, cloth.Purchase));
            }

            if (fabric.Roles.Contains(quilt.Backing.Role))
            {
                lengths.Add(new(fabric.Letter, NeedKind.Backing, [quilt.Backing.Role], fabric.Number, pieced.Backing.Purchase));
            }
        }

        return new(lengths.ToImmutable(), pieced.Batting);
    }
}
