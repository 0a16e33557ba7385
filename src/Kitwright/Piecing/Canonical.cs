using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// The standard pose of a region, so that equal units are made once wherever and however turned they lie. Cloth may
/// be turned but not mirrored.
/// </summary>
/// <param name="Region">With its lower left corner at the origin.</param>
/// <param name="Home">From the standard pose back to where the region lay.</param>
internal sealed record Canonical(Region Region, Motion Home)
{
    private string? key;

    /// <summary>Equal for regions that look alike in their standard pose; written when it is asked for.</summary>
    public string Key => key ??= Region.Key();

    /// <summary>Regions of more items lie once in a quilt: turning them about to compare them is wasted work.</summary>
    private const int MostCompared = 64;

    public static Canonical Of(Region region) =>
        Enumerable
            .Range(0, region.Items.Length > MostCompared ? 1 : 4)
            .Select(turns => IsSlantedStrip(region) ? Posed(region, Motion.EighthTurns((2 * turns) + 1)) : Posed(region, turns))
            .MinBy(pose => pose.Key, StringComparer.Ordinal)!;

    /// <summary>A sash of a quilt on point: a rectangle of one fabric at 45 degrees, longer than wide.</summary>
    private static bool IsSlantedStrip(Region region) =>
        region.Items is [{ Role: not null } only]
        && !Shapes.IsRectangle(only.Shape)
        && only.Shape.Moved(Motion.EighthTurns(1)) is var turned
        && Shapes.IsRectangle(turned)
        && turned.Bounds() is var (low, high)
        && high.X - low.X != high.Y - low.Y;

    /// <summary>The region as it lies, shifted to the origin: for blocks, whose own coordinates count.</summary>
    public static Canonical Upright(Region region) => Posed(region, 0);

    public static Canonical Posed(Region region, int turns) => Posed(region, Motion.QuarterTurns(turns));

    private static Canonical Posed(Region region, Motion turn)
    {
        var turned = turn == Motion.Identity ? region : region.Moved(turn);
        var toOrigin = Motion.Shift(-turned.Bounds.Low.X, -turned.Bounds.Low.Y);
        var posed = turned.Moved(toOrigin);
        return new(posed, turn.Then(toOrigin).Inverse());
    }
}
