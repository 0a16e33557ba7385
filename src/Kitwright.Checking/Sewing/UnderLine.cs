using Kitwright.Checking.Exact;
using Kitwright.Geometry;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// Where cloth lies under a line. The parameter of a point p is its step from the line's start times the line's own
/// step (a dot product), so no root is needed.
/// </summary>
internal static class UnderLine
{
    public static Surd Parameter(Line line, Point p)
    {
        Point step = line.To - line.From,
            reach = p - line.From;
        return (step.X * reach.X) + (step.Y * reach.Y);
    }

    /// <summary>All of it: inside faces and along their edges.</summary>
    public static Spans Of(Cloth cloth, Line line, Effort effort)
    {
        effort.Spend(cloth.Faces.Length);
        var own = cloth.OwnLine(line);
        var half = HalfPlane.LeftOf(own);
        return Spans.Union(cloth.Faces.Select(f => Across(f.Shape, own, half)).OfType<(Surd, Surd)>());
    }

    /// <summary>Where faces that lie on one side have an edge on the line.</summary>
    /// <param name="own">The line in the faces' coordinates.</param>
    public static Spans EdgesOf(IEnumerable<Face> faces, Line own)
    {
        var half = HalfPlane.LeftOf(own);
        return Spans.Union(faces.Select(f => EdgeOn(f.Shape, own, half)).OfType<(Surd, Surd)>());
    }

    public static (Surd From, Surd To)? EdgeOn(Shape shape, Line own, HalfPlane half)
    {
        (Surd From, Surd To)? span = null;
        for (var i = 0; i < shape.Count; i++)
        {
            if (half.SideOf(shape, i) == 0)
            {
                span = Widened(span, Parameter(own, shape[i]));
            }
        }

        return span;
    }

    private static (Surd, Surd)? Across(Shape shape, Line own, HalfPlane half)
    {
        (Surd From, Surd To)? span = null;
        var before = half.SideOf(shape, shape.Count - 1);
        for (var i = 0; i < shape.Count; i++)
        {
            var side = half.SideOf(shape, i);
            if (side == 0)
            {
                span = Widened(span, Parameter(own, shape[i]));
            }
            else if (side * before < 0)
            {
                var previous = shape[(i + shape.Count - 1) % shape.Count];
                span = Widened(span, Parameter(own, Shape.Crossing(half, previous, shape[i])));
            }

            before = side;
        }

        return span;
    }

    private static (Surd, Surd) Widened((Surd From, Surd To)? span, Surd at) =>
        span is not { } s ? (at, at)
        : at < s.From ? (at, s.To)
        : at > s.To ? (s.From, at)
        : s;
}
