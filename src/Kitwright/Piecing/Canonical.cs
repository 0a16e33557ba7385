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

    public static Canonical Of(Region region)
    {
        if (IsSlantedStrip(region))
        {
            return Enumerable.Range(0, 4).Select(turns => Posed(region, Motion.EighthTurns((2 * turns) + 1))).MinBy(pose => pose.Key, StringComparer.Ordinal)!;
        }

        if (region.Items.Length > MostCompared)
        {
            return Posed(region, 0);
        }

        var (turns, key) = PoseKeys.Of(region).Index().MinBy(pose => pose.Item, StringComparer.Ordinal);
        return Posed(region, turns) with { key = key };
    }

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

    public static Canonical Posed(Region region, Motion turn)
    {
        var (low, high) = region.Bounds;
        // Turned by quarters, the box that bounds the region goes with it.
        Point one = turn.Apply(low),
            other = turn.Apply(high);
        var corner = turn.XX.IsZero || turn.XY.IsZero
            ? new Point(one.X < other.X ? one.X : other.X, one.Y < other.Y ? one.Y : other.Y)
            : region.Moved(turn).Bounds.Low;
        var motion = turn with { DX = -corner.X, DY = -corner.Y };
        return new(motion == Motion.Identity ? region : region.Moved(motion), motion.Inverse());
    }
}
