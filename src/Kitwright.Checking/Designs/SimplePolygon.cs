using Kitwright.Geometry;

namespace Kitwright.Checking.Designs;

/// <summary>Whether corners make a polygon that runs once round, counterclockwise, without touching itself.</summary>
internal static class SimplePolygon
{
    /// <summary>More corners than any patch has; the test compares all pairs of edges.</summary>
    public const int MostCorners = 400;

    /// <summary>What the test of so many corners takes at most.</summary>
    public static long Steps(int corners) => corners > 4 ? (long)corners * corners : corners;

    /// <summary>The key of what is wrong, or null.</summary>
    public static string? Fault(ReadOnlySpan<Point> corners)
    {
        if (corners.Length is < 3 or > MostCorners)
        {
            return "corners";
        }

        for (var i = 0; i < corners.Length; i++)
        {
            if (corners[i] == corners[(i + 1) % corners.Length])
            {
                return "repeated";
            }
        }

        if (IsConvexWithFewCorners(corners))
        {
            return null;
        }

        for (var i = 0; i < corners.Length; i++)
        {
            for (var j = i + 1; j < corners.Length; j++)
            {
                if (Touch(corners, i, j))
                {
                    return "crossing";
                }
            }
        }

        return TwiceArea(corners).Sign > 0 ? null : "clockwise";
    }

    /// <summary>Left turns at all of up to four corners turn by less than four half turns: once round.</summary>
    private static bool IsConvexWithFewCorners(ReadOnlySpan<Point> corners)
    {
        if (corners.Length > 4)
        {
            return false;
        }

        for (var i = 0; i < corners.Length; i++)
        {
            if (Turn(corners[i], corners[(i + 1) % corners.Length], corners[(i + 2) % corners.Length]) <= 0)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Touch(ReadOnlySpan<Point> corners, int i, int j)
    {
        var n = corners.Length;
        Point a = corners[i],
            b = corners[(i + 1) % n],
            c = corners[j],
            d = corners[(j + 1) % n];
        if (j == i + 1)
        {
            return Turn(a, b, d) == 0 && IsBetween(a, b, d);
        }

        if (i == 0 && j == n - 1)
        {
            return Turn(c, a, b) == 0 && IsBetween(c, a, b);
        }

        int abc = Turn(a, b, c),
            abd = Turn(a, b, d),
            cda = Turn(c, d, a),
            cdb = Turn(c, d, b);
        return (abc * abd < 0 && cda * cdb < 0)
            || (abc == 0 && IsOn(a, b, c))
            || (abd == 0 && IsOn(a, b, d))
            || (cda == 0 && IsOn(c, d, a))
            || (cdb == 0 && IsOn(c, d, b));
    }

    /// <summary>Of an edge from p to q and the next to r on one line: whether it runs back over itself.</summary>
    private static bool IsBetween(Point p, Point q, Point r) => Dot(p - q, r - q).Sign > 0;

    private static bool IsOn(Point p, Point q, Point on) => Dot(p - on, q - on).Sign <= 0;

    private static Surd Dot(Point p, Point q) => (p.X * q.X) + (p.Y * q.Y);

    private static int Turn(Point p, Point q, Point r) =>
        (((q.X - p.X) * (r.Y - p.Y)) - ((q.Y - p.Y) * (r.X - p.X))).Sign;

    private static Surd TwiceArea(ReadOnlySpan<Point> corners)
    {
        var sum = Surd.Zero;
        for (var i = 0; i < corners.Length; i++)
        {
            var (p, q) = (corners[i], corners[(i + 1) % corners.Length]);
            sum += (p.X * q.Y) - (p.Y * q.X);
        }

        return sum;
    }
}
