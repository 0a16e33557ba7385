using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Quilts;

/// <summary>What of a convex polygon lies on one side of a slanted line at 45 degrees, exactly.</summary>
/// <remarks>Sutherland and Hodgman, "Reentrant polygon clipping", CACM 17(1), 1974, for one line (from memory).</remarks>
internal static class HalfPlaneCut
{
    /// <summary>The points with <c>x·p + y·q ≤ most</c>, for p and q of ±1; null where they enclose nothing.</summary>
    public static Polygon? Below(Polygon? shape, int p, int q, Surd most)
    {
        if (shape is null)
        {
            return null;
        }

        Surd Excess(Point point) => (point.X * p) + (point.Y * q) - most;
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            Surd before = Excess(from),
                after = Excess(to);
            if (before.Sign <= 0)
            {
                kept.Add(from);
            }

            if (before.Sign * after.Sign < 0)
            {
                kept.Add(from + ((to - from) * (before / (before - after))));
            }
        }

        return kept.Count > 2 ? new(kept.ToImmutable()) : null;
    }
}
