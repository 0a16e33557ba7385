using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Piecing;

/// <summary>
/// Where no straight seam divides a region: whether it takes a partial seam or a set-in one, and the least that could be
/// added to the drawing so that a straight seam runs through.
/// </summary>
internal static class NoStraightSeam
{
    public static Finding Of(Region region, string place)
    {
        var kind = HasSetInCorner(region) ? "piecing.set-in-seam" : "piecing.partial-seam";
        var eighth = Length.Inches(0, 1, 8);
        var patches = region.Items.Length;
        return LeastExtra(region) is { } extra
            ? Finding.Of(
                kind,
                place,
                ("patches", patches),
                ("divided", extra.Divided),
                ("fromX", Known(extra.From.X, eighth)),
                ("fromY", Known(extra.From.Y, eighth)),
                ("toX", Known(extra.To.X, eighth)),
                ("toY", Known(extra.To.Y, eighth))
            )
            : Finding.Of("piecing.no-straight-seam", place);
    }

    private static Length Known(Surd value, Length step) => value.IsRational ? Length.Inches(value.One) : value.RoundUpTo(step);

    /// <summary>
    /// A corner inside the region at which no seam goes straight on: three patches meet there, or a patch is hollow, and
    /// one of them has to be set in. Where every seam that ends does so on another that goes on, sewing part of a seam
    /// first is enough.
    /// </summary>
    private static bool HasSetInCorner(Region region)
    {
        var (low, high) = region.Bounds;
        foreach (var corner in region.Items.SelectMany(i => i.Shape.Corners).Distinct())
        {
            if (corner.X == low.X || corner.X == high.X || corner.Y == low.Y || corner.Y == high.Y)
            {
                continue;
            }

            var ways = region.Items.SelectMany(i => WaysFrom(i.Shape, corner)).ToArray();
            if (ways.Length > 0 && !ways.Any(w => ways.Any(o => Point.Cross(w, o).IsZero && Point.Dot(w, o).Sign < 0)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The steps along a patch's edges away from a place: two at its corner or within an edge, none elsewhere.</summary>
    private static IEnumerable<Point> WaysFrom(Polygon shape, Point place)
    {
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            if (!Point.Cross(to - from, place - from).IsZero || Point.Dot(from - place, to - place).Sign > 0)
            {
                continue;
            }

            if (from != place)
            {
                yield return from - place;
            }

            if (to != place)
            {
                yield return to - place;
            }
        }
    }

    private sealed record Extra(int Divided, double Inches, Point From, Point To);

    /// <summary>Of all lines along edges of patches the one that divides the fewest patches, over the shortest way.</summary>
    private static Extra? LeastExtra(Region region)
    {
        Extra? best = null;
        var seen = new HashSet<string>();
        foreach (var shape in region.Items.Select(i => i.Shape))
        {
            for (var i = 0; i < shape.Corners.Length; i++)
            {
                var line = new Line(shape.Corners[i], shape.Corners[(i + 1) % shape.Corners.Length]);
                if (seen.Add(KeyOf(line)) && Along(region, line) is { } extra && (best is null || (extra.Divided, extra.Inches).CompareTo((best.Divided, best.Inches)) < 0))
                {
                    best = extra;
                }
            }
        }

        return best;
    }

    private static Extra? Along(Region region, Line line)
    {
        bool left = false,
            right = false;
        var divided = 0;
        double inches = 0;
        var ends = new List<Point>();
        foreach (var shape in region.Items.Select(i => i.Shape))
        {
            var sides = shape.Corners.Select(line.SideOf).ToArray();
            left |= sides.Contains(1);
            right |= sides.Contains(-1);
            if (sides.Contains(1) && sides.Contains(-1))
            {
                divided++;
                var (from, to) = Chord(shape, line, sides);
                ends.Add(from);
                ends.Add(to);
                inches += Math.Sqrt(Point.Dot(to - from, to - from).ToDouble());
            }
        }

        if (!left || !right || divided == 0)
        {
            return null;
        }

        var along = ends.OrderBy(p => Point.Dot(line.Step, p)).ToArray();
        var low = region.Bounds.Low;
        return new(divided, inches, along[0] - low, along[^1] - low);
    }

    private static (Point From, Point To) Chord(Polygon shape, Line line, int[] sides)
    {
        var hits = new List<Point>();
        for (var i = 0; i < sides.Length; i++)
        {
            var next = (i + 1) % sides.Length;
            Point p = shape.Corners[i],
                q = shape.Corners[next];
            if (sides[i] == 0)
            {
                hits.Add(p);
            }
            else if (sides[i] * sides[next] < 0)
            {
                Surd atP = Point.Cross(line.Step, p - line.From),
                    atQ = Point.Cross(line.Step, q - line.From);
                hits.Add(p + ((q - p) * (atP / (atP - atQ))));
            }
        }

        var sorted = hits.OrderBy(p => Point.Dot(line.Step, p)).ToImmutableArray();
        return (sorted[0], sorted[^1]);
    }

    // Slope and where the line passes: equal for equal lines.
    private static string KeyOf(Line line) =>
        line.Step.X.IsZero ? $"x {line.From.X}" : $"{line.Step.Y / line.Step.X} {line.From.Y - (line.From.X * (line.Step.Y / line.Step.X))}";
}
