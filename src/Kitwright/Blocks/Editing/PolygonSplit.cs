using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Blocks.Editing;

/// <summary>Simple polygons cut and cleaned, exactly.</summary>
internal static class PolygonSplit
{
    /// <summary>
    /// The parts of a polygon, cut along a segment wherever that runs through it from side to side.
    /// </summary>
    /// <param name="stuck">Where the segment ends inside the polygon, so that no seam can be sewn; null where it does not.</param>
    public static ImmutableArray<Polygon> Along(Polygon shape, Line segment, out Point? stuck)
    {
        stuck = null;
        var parts = new List<Polygon> { WithCrossings(shape, segment) };
        var onLine = parts[0].Corners.Where(c => segment.SideOf(c) == 0).Distinct().OrderBy(c => Along(segment, c)).ToList();
        var length = Along(segment, segment.To);
        foreach (var (from, to) in onLine.Zip(onLine.Skip(1)))
        {
            if (shape.Where(Middle(from, to)) != Side.Inside)
            {
                continue;
            }

            Surd start = Along(segment, from),
                end = Along(segment, to);
            if (start.Sign >= 0 && end <= length)
            {
                Divide(parts, from, to);
            }
            else if (start < length && end.Sign > 0)
            {
                stuck = start.Sign < 0 ? segment.From : segment.To;
            }
        }

        return [.. parts.Select(Cleaned)];
    }

    /// <summary>The parts on either side of an endless line.</summary>
    public static ImmutableArray<Polygon> Across(Polygon shape, Line line)
    {
        var step = line.Step;
        var (low, high) = shape.Bounds();
        // Long enough to reach past the polygon at both ends, whichever way it runs.
        var reach = (high.X - low.X + (high.Y - low.Y) + 1) / (Abs(step.X) + Abs(step.Y));
        var middle = line.From + (step * (Point.Dot(low - line.From, step) / Point.Dot(step, step)));
        return Along(shape, new(middle - (step * (reach * 2)), middle + (step * (reach * 2))), out _);
    }

    /// <summary>Without corners that lie on the straight line between their neighbors.</summary>
    public static Polygon Cleaned(Polygon shape)
    {
        var corners = shape.Corners;
        var kept = corners.Where((corner, i) => !Point.Cross(corner - corners[(i + corners.Length - 1) % corners.Length], corners[(i + 1) % corners.Length] - corner).IsZero);
        return new([.. kept]);
    }

    private static Polygon WithCrossings(Polygon shape, Line line)
    {
        var corners = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            corners.Add(from);
            if (line.SideOf(from) * line.SideOf(to) < 0)
            {
                Surd before = Point.Cross(line.Step, from - line.From),
                    after = Point.Cross(line.Step, to - line.From);
                corners.Add(from + ((to - from) * (before / (before - after))));
            }
        }

        return new(corners.ToImmutable());
    }

    // Both ends are corners of the part that the chord runs through.
    private static void Divide(List<Polygon> parts, Point from, Point to)
    {
        var index = parts.FindIndex(part => part.Corners.Contains(from) && part.Corners.Contains(to) && part.Where(Middle(from, to)) == Side.Inside);
        var corners = parts[index].Corners;
        int first = corners.IndexOf(from),
            second = corners.IndexOf(to);
        var (i, j) = first < second ? (first, second) : (second, first);
        parts[index] = new([.. corners[i..(j + 1)]]);
        parts.Add(new([.. corners[j..], .. corners[..(i + 1)]]));
    }

    private static Surd Along(Line line, Point point) => Point.Dot(line.Step, point - line.From);

    private static Surd Abs(Surd value) => value.Sign < 0 ? -value : value;

    private static Point Middle(Point from, Point to) => from + ((to - from) * new Surd(new Measure.Rational(1, 2)));
}
