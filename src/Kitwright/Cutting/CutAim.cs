using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>What a cutting plan is made good at, one after the other; see <see cref="CutOrder"/>.</summary>
public enum CutAim
{
    /// <summary>The length: as it is bought or to the inch, see <see cref="CutGoal"/>.</summary>
    Purchase,

    /// <summary>Fewest ruler settings.</summary>
    Settings,

    /// <summary>Fewest cuts: strips, sub-cuts and trims, each pass of the blade once.</summary>
    Cuts,

    /// <summary>Fewest pieces beyond the demand. Strips are planned without any, so that this never decides.</summary>
    Surplus,

    /// <summary>The largest leftover: the end of the length, which is largest where the strips take least.</summary>
    Leftover,
}

/// <summary>In which order the aims count: a later one decides only among plans that are equal in all earlier ones.</summary>
public static class CutOrder
{
    public static ImmutableArray<CutAim> Usual { get; } = [CutAim.Purchase, CutAim.Settings, CutAim.Cuts, CutAim.Surplus, CutAim.Leftover];

    /// <summary>Whether each aim is there once.</summary>
    public static bool IsWhole(ImmutableArray<CutAim> order) =>
        !order.IsDefault && order.Length == Usual.Length && order.Order().SequenceEqual(Usual.Order());

    /// <summary>The order with an aim at a place; what was there takes the place that the aim had.</summary>
    public static ImmutableArray<CutAim> With(ImmutableArray<CutAim> order, int place, CutAim aim) =>
        order.SetItem(order.IndexOf(aim), order[place]).SetItem(place, aim);
}
