using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Partitions;

/// <summary>Whether a side that is an arc meets another side anywhere but at an end of either. Exact.</summary>
/// <remarks>
/// Two circles, or a line and a circle, meet at base ± along·√square, where all three are exact coordinates; which
/// side of a direction such a point lies on is the sign of u ± v√w, found by squaring. The points themselves have no
/// exact coordinates as a rule.
/// </remarks>
internal readonly record struct RoundMeeting(Point Base, Point Along, Surd Square)
{
    /// <summary>A meeting point to the nearest 1/64 in, to show where it is; null where there is none.</summary>
    public static Point? Of(Edge a, Edge b)
    {
        var meeting = (a.Center, b.Center) switch
        {
            ({ } center, { } other) => center == other ? null : Circles(a, center, b, other),
            ({ } center, null) => LineAndCircle(b, a, center),
            (null, { } center) => LineAndCircle(a, b, center),
            _ => null,
        };
        if (meeting is not { } found || found.Square.Sign < 0)
        {
            return null;
        }

        foreach (var sign in new[] { 1, -1 })
        {
            if (found.LiesWithin(a, sign) && found.LiesWithin(b, sign))
            {
                return found.Nearest(sign);
            }
        }

        return null;
    }

    // With d from one center to the other: base = center + d·(R − S + d²)/2d², square = R/d² − (…)², along = d turned.
    private static RoundMeeting? Circles(Edge a, Point center, Edge b, Point other)
    {
        var d = other - center;
        var dd = Point.Dot(d, d);
        var part = (a.RadiusSquared - b.RadiusSquared + dd) / (2 * dd);
        return new(center + (d * part), new(-d.Y, d.X), (a.RadiusSquared / dd) - (part * part));
    }

    private static RoundMeeting? LineAndCircle(Edge line, Edge arc, Point center)
    {
        Point step = line.To - line.From,
            f = line.From - center;
        Surd a = Point.Dot(step, step),
            b = Point.Dot(f, step);
        return new(line.From - (step * (b / a)), step * (1 / a), (b * b) - (a * (Point.Dot(f, f) - arc.RadiusSquared)));
    }

    private bool LiesWithin(Edge edge, int sign)
    {
        if (edge.Center is { } center)
        {
            var (start, end) = edge.Directions(center);
            int left = SignOf(Point.Cross(start, Base - center), Point.Cross(start, Along), sign),
                right = SignOf(Point.Cross(Base - center, end), Point.Cross(Along, end), sign);
            return Edge.IsBetween(Point.Cross(start, end).Sign, left, right);
        }

        var step = edge.To - edge.From;
        return SignOf(Point.Dot(Base - edge.From, step), Point.Dot(Along, step), sign) > 0
            && SignOf(Point.Dot(edge.To - Base, step), -Point.Dot(Along, step), sign) > 0;
    }

    // The sign of u ± v√Square.
    private int SignOf(Surd u, Surd v, int sign)
    {
        int p = u.Sign,
            q = Square.IsZero ? 0 : v.Sign * sign;
        if (q == 0 || p == q)
        {
            return p;
        }

        return p == 0 ? q : p * ((u * u) - (v * v * Square)).Sign;
    }

    private Point Nearest(int sign)
    {
        var root = sign * Math.Sqrt(Square.ToDouble());
        return new(Nearest(Base.X.ToDouble() + (Along.X.ToDouble() * root)), Nearest(Base.Y.ToDouble() + (Along.Y.ToDouble() * root)));
    }

    private static Surd Nearest(double inches) => new Rational((long)Math.Round(inches * 64), 64);
}
