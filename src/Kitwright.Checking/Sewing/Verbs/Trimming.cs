using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// Cutting to a rectangle. It must lie within the cloth; without being counted it may take off one ruler step in each
/// direction, the excess of a size that was rounded up.
/// </summary>
internal static class Trimming
{
    public static Finding? Do(Trim verb, Table table, string place)
    {
        if (table.PickCloth(verb.On, place, out var cloth) is { } finding)
        {
            return finding;
        }

        var corners = verb.Rectangle.Corners;
        if (corners.Length != 4 || !IsRectangle(corners.AsSpan()))
        {
            return Finding.Of("check.sewing.trim-shape", place);
        }

        var undo = Rigid.Undo(cloth.Lies);
        var rectangle = new Shape([.. corners]).Moved(undo);
        table.Effort.Spend(cloth.Faces.Length);
        Face[] kept = [.. cloth.Faces.Select(f => Meet(f, rectangle)).OfType<Face>()];
        if (kept.Aggregate(Surd.Zero, (sum, f) => sum + f.Shape.TwiceArea) != rectangle.TwiceArea)
        {
            return Finding.Of("check.sewing.trim-too-small", place, ("register", verb.On)) with
            {
                Measured = Extent(cloth.Faces, rectangle),
                Expected = Say.AtLeast(Size(rectangle, Length.Zero)),
            };
        }

        if (!verb.Counted && !(Spare(cloth.Faces, rectangle, 0, table) && Spare(cloth.Faces, rectangle, 1, table)))
        {
            return Finding.Of("check.sewing.trim-uncounted", place, ("register", verb.On), ("step", table.RulerStep)) with
            {
                Measured = Extent(cloth.Faces, rectangle),
                Expected = Say.AtMost(Size(rectangle, table.RulerStep)),
            };
        }

        return table.Put(verb.On, new Cloth(kept, cloth.Lies), place);
    }

    private static Face? Meet(Face face, Shape rectangle)
    {
        var rest = face.Shape.Within(rectangle);
        return rest is null ? null : face with { Shape = rest };
    }

    private static bool IsRectangle(ReadOnlySpan<Point> c)
    {
        Point p = c[1] - c[0],
            q = c[3] - c[0];
        var turn = (p.X * q.Y) - (p.Y * q.X);
        return turn.Sign > 0 && ((p.X * q.X) + (p.Y * q.Y)).IsZero && c[2] == c[1] + q;
    }

    /// <summary>Whether the cloth is at most one ruler step longer than the rectangle along one of its sides.</summary>
    private static bool Spare(Face[] faces, Shape rectangle, int side, Table table)
    {
        var along = new Line(rectangle[side], rectangle[side + 1]);
        Surd whole = UnderLine.Parameter(along, along.To),
            excess = Reach(faces, along) - whole;
        Surd step = table.RulerStep;
        // Parameters are lengths times the side's length, so both sides are squared: no root.
        return excess * excess <= step * step * whole;
    }

    private static Surd Reach(Face[] faces, Line along)
    {
        Surd? low = null,
            high = null;
        foreach (var face in faces)
        {
            for (var i = 0; i < face.Shape.Count; i++)
            {
                var at = UnderLine.Parameter(along, face.Shape[i]);
                low = low is { } l && l <= at ? l : at;
                high = high is { } h && h >= at ? h : at;
            }
        }

        return high!.Value - low!.Value;
    }

    private static Message Extent(Face[] faces, Shape rectangle)
    {
        Line across = new(rectangle[0], rectangle[1]),
            up = new(rectangle[1], rectangle[2]);
        return Say.Size(
            Reach(faces, across) / Roots.AtMost(UnderLine.Parameter(across, across.To)),
            Reach(faces, up) / Roots.AtMost(UnderLine.Parameter(up, up.To))
        );
    }

    private static Message Size(Shape rectangle, Length more) =>
        Say.Size(
            Roots.AtMost(UnderLine.Parameter(new(rectangle[0], rectangle[1]), rectangle[1])) + (Surd)more,
            Roots.AtMost(UnderLine.Parameter(new(rectangle[1], rectangle[2]), rectangle[2])) + (Surd)more
        );
}
