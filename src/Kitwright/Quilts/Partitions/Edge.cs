using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>
/// A directed side of a patch, straight or an arc about an exact center; what it bounds lies to its left.
/// </summary>
/// <param name="Owner">Index of the patch, or <see cref="Outside"/> for the outline, whose left is the outside.</param>
internal readonly record struct Edge(Point From, Point To, Point? Center, bool Clockwise, int Owner)
{
    public const int Outside = -1;

    public bool IsArc => Center is not null;

    public Edge Reversed => new(To, From, Center, IsArc && !Clockwise, Owner);

    /// <summary>Whether another straight side on the same line has the same direction.</summary>
    public bool RunsWith(Edge other) => Point.Dot(To - From, other.To - other.From).Sign > 0;

    /// <summary>The same side, whoever owns it.</summary>
    public Edge Unowned => this with { Owner = Outside };

    /// <summary>Exact: whether a point lies on the side and is neither end.</summary>
    public bool Contains(Point point)
    {
        if (point == From || point == To)
        {
            return false;
        }

        return Center is { } center
            ? IsOnCircle(center, point) && IsBetween(center, point)
            : Point.Cross(To - From, point - From).IsZero && Point.Dot(From - point, To - point).Sign < 0;
    }

    /// <summary>Of an arc; a straight side has none.</summary>
    public Surd RadiusSquared => Center is { } center ? Point.Dot(From - center, From - center) : Surd.Zero;

    private bool IsOnCircle(Point center, Point point) => Point.Dot(point - center, point - center) == RadiusSquared;

    /// <summary>Whether a direction from the center points between the ends, in the arc's sense.</summary>
    public bool IsBetween(Point center, Point point)
    {
        var (start, end) = Directions(center);
        var step = point - center;
        return IsBetween(Point.Cross(start, end).Sign, Point.Cross(start, step).Sign, Point.Cross(step, end).Sign);
    }

    /// <summary>From the center to where the arc starts and ends when it is run counterclockwise.</summary>
    public (Point Start, Point End) Directions(Point center) =>
        ((Clockwise ? To : From) - center, (Clockwise ? From : To) - center);

    /// <param name="turn">Side of the start on which the end lies: left, below half a turn.</param>
    /// <param name="left">Side of the start on which the direction lies.</param>
    /// <param name="right">Side of the direction on which the end lies.</param>
    public static bool IsBetween(int turn, int left, int right) =>
        turn switch
        {
            > 0 => left > 0 && right > 0,
            < 0 => left > 0 || right > 0,
            _ => left > 0,
        };

    /// <summary>The side in pieces, cut at points that it contains.</summary>
    public IEnumerable<Edge> SplitAt(List<Point> points)
    {
        points.Sort(CompareAlong);
        var from = From;
        foreach (var point in points)
        {
            yield return this with { From = from, To = point };
            from = point;
        }

        yield return this with { From = from };
    }

    private int CompareAlong(Point p, Point q)
    {
        if (Center is not { } center)
        {
            return Point.Dot(To - From, p - q).Sign;
        }

        if (p == q)
        {
            return 0;
        }

        // Of two points on the arc, the one nearer to its start has the other between itself and the end.
        return (this with { From = p }).IsBetween(center, q) ? -1 : 1;
    }
}
