using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>Where two sides of one patch meet though they should not: anywhere but at a corner that they share.</summary>
internal static class Crossing
{
    /// <summary>A point that both sides have and that is no end of both; null where there is none.</summary>
    public static Point? Of(Edge a, Edge b)
    {
        foreach (var (edge, other) in new[] { (a, b), (b, a) })
        {
            if (edge.Contains(other.From))
            {
                return other.From;
            }

            if (edge.Contains(other.To))
            {
                return other.To;
            }
        }

        return a.IsArc || b.IsArc ? RoundMeeting.Of(a, b) : Inner(a, b);
    }

    /// <summary>The point inside both of two straight sides, where they cross.</summary>
    public static Point? Inner(Edge a, Edge b)
    {
        Point step = a.To - a.From,
            other = b.To - b.From;
        int p = Point.Cross(step, b.From - a.From).Sign,
            q = Point.Cross(step, b.To - a.From).Sign;
        if (p * q >= 0)
        {
            return null;
        }

        int r = Point.Cross(other, a.From - b.From).Sign,
            s = Point.Cross(other, a.To - b.From).Sign;
        if (r * s >= 0)
        {
            return null;
        }

        var along = Point.Cross(b.From - a.From, other) / Point.Cross(step, other);
        return a.From + (step * along);
    }
}
