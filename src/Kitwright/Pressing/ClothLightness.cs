using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>How light a fabric is, for pressing toward the darker one.</summary>
internal static class ClothLightness
{
    public static Func<string, double> OfRoles(ImmutableArray<PlanFabric> fabrics)
    {
        var byRole = fabrics.SelectMany(f => f.Roles.Select(role => (role, Light: Lightness.Of(f.Color)))).ToDictionary(x => x.role, x => x.Light);
        return role => byRole.GetValueOrDefault(role, Lightness.Middle);
    }
}
