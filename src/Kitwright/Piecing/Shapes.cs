using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>Comparison of outlines.</summary>
internal static class Shapes
{
    /// <summary>True where both run through the same corners; order and start do not matter for triangles and rectangles.</summary>
    public static bool Same(Polygon shape, ImmutableArray<Point> corners) =>
        shape.Corners.Length == corners.Length && corners.All(shape.Corners.Contains);

    public static bool IsRectangle(Polygon shape) =>
        shape.Corners.Length == 4
        && shape.Bounds() is var (low, high)
        && shape.Corners.All(c => (c.X == low.X || c.X == high.X) && (c.Y == low.Y || c.Y == high.Y));
}
