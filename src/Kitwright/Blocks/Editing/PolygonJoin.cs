using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Blocks.Editing;

/// <summary>Two polygons that share a side, as one.</summary>
internal static class PolygonJoin
{
    /// <summary>Null where they do not touch along a side, or would enclose a hole.</summary>
    public static Polygon? Of(Polygon one, Polygon other)
    {
        List<(Point From, Point To)> sides = [.. Sides(one, other), .. Sides(other, one)];
        var set = sides.ToHashSet();
        var left = sides.Where(side => !set.Contains((side.To, side.From))).ToList();
        if (left.Count == sides.Count || left.DistinctBy(side => side.From).Count() != left.Count)
        {
            return null;
        }

        var next = left.ToDictionary(side => side.From, side => side.To);
        var corners = ImmutableArray.CreateBuilder<Point>();
        var at = left[0].From;
        do
        {
            corners.Add(at);
            at = next[at];
        } while (at != left[0].From);

        return corners.Count == left.Count ? PolygonSplit.Cleaned(new(corners.ToImmutable())) : null;
    }

    // The sides of a polygon, cut where corners of the other lie on them.
    private static IEnumerable<(Point From, Point To)> Sides(Polygon shape, Polygon other)
    {
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            var stops = other
                .Corners.Where(c => Point.Cross(to - from, c - from).IsZero && Point.Dot(from - c, to - c).Sign < 0)
                .OrderBy(c => Point.Dot(c - from, to - from))
                .Append(to);
            foreach (var stop in stops)
            {
                yield return (from, stop);
                from = stop;
            }
        }
    }
}
