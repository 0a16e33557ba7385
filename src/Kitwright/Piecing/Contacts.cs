using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>Where two outlines lie along one another.</summary>
internal static class Contacts
{
    /// <summary>The stretches that edges of the two share, in the direction in which the first lies to the left.</summary>
    public static (Point From, Point To)[] Between(Polygon one, Polygon other)
    {
        var found = new List<(Point, Point)>();
        if (!ReferenceEquals(one, other) && BoxesMeet(one, other))
        {
            for (var i = 0; i < one.Corners.Length; i++)
            {
                Point from = one.Corners[i],
                    to = one.Corners[(i + 1) % one.Corners.Length];
                for (var j = 0; j < other.Corners.Length; j++)
                {
                    if (Shared(from, to, other.Corners[j], other.Corners[(j + 1) % other.Corners.Length]) is { } shared)
                    {
                        found.Add(shared);
                    }
                }
            }
        }

        return [.. found];
    }

    // Neighbors run along a common edge in opposite directions.
    private static (Point, Point)? Shared(Point from, Point to, Point otherFrom, Point otherTo)
    {
        var step = to - from;
        if (!Point.Cross(step, otherFrom - from).IsZero || !Point.Cross(step, otherTo - from).IsZero || Point.Dot(step, otherTo - otherFrom).Sign >= 0)
        {
            return null;
        }

        var start = Point.Dot(step, otherTo - from).Sign > 0 ? otherTo : from;
        var end = Point.Dot(step, otherFrom - to).Sign < 0 ? otherFrom : to;
        return Point.Dot(step, end - start).Sign > 0 ? (start, end) : null;
    }

    private static bool BoxesMeet(Polygon one, Polygon other)
    {
        var (low, high) = one.Bounds();
        var (otherLow, otherHigh) = other.Bounds();
        return low.X <= otherHigh.X && otherLow.X <= high.X && low.Y <= otherHigh.Y && otherLow.Y <= high.Y;
    }

    /// <summary>
    /// The stretches as one path that turns left at each of its corners, stretches in one line made one; null where they
    /// are several paths, a closed one, or one that turns right.
    /// </summary>
    public static Line[]? Path(IReadOnlyCollection<(Point From, Point To)> stretches)
    {
        if (stretches.Count == 0)
        {
            return null;
        }

        var byStart = new Dictionary<Point, Point>();
        foreach (var (from, to) in stretches)
        {
            if (!byStart.TryAdd(from, to))
            {
                return null;
            }
        }

        var ends = stretches.Select(s => s.To).ToHashSet();
        var starts = byStart.Keys.Where(from => !ends.Contains(from)).ToArray();
        if (starts is not [var at])
        {
            return null;
        }

        var lines = new List<Line>();
        var walked = 0;
        while (byStart.TryGetValue(at, out var to))
        {
            walked++;
            if (lines.Count > 0)
            {
                var turn = Point.Cross(lines[^1].Step, to - at).Sign;
                if (turn < 0 || (turn == 0 && Point.Dot(lines[^1].Step, to - at).Sign < 0))
                {
                    return null;
                }

                if (turn == 0)
                {
                    lines[^1] = new(lines[^1].From, to);
                    at = to;
                    continue;
                }
            }

            lines.Add(new(at, to));
            at = to;
        }

        return walked == stretches.Count ? [.. lines] : null;
    }
}
