using Kitwright.Checking.Designs;
using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// A unit whose finished outline is not a rectangle: the outline is convex, fits the stated size, and cloth fills it.
/// The allowances beyond it are held against the seam where the unit is joined, and the rectangle that it ends up in
/// holds its outer edges; so the top, which is joined to nothing, is always a rectangle.
/// </summary>
internal static class OutlineRule
{
    public static Finding? Check(Recipe recipe, Polygon stated, Face[] faces, Table table)
    {
        var corners = stated.Corners;
        table.Effort.Spend(SimplePolygon.Steps(corners.Length));
        if (
            recipe.Shows == Recipe.WholeTop
            || SimplePolygon.Fault(corners.AsSpan()) is not null
            || !IsConvex(corners.AsSpan())
            || !Fits(recipe, corners.AsSpan(), table)
        )
        {
            return Finding.Of("check.sewing.outline", recipe.Id.Value);
        }

        var outline = new Shape([.. corners]);
        var inside = Surd.Zero;
        foreach (var face in faces)
        {
            inside += face.Shape.Within(outline)?.TwiceArea ?? Surd.Zero;
        }

        return inside == outline.TwiceArea
            ? null
            : Finding.Of("check.sewing.outline-open", recipe.Id.Value) with
            {
                Measured = Say.Area(inside),
                Expected = Say.Area(outline.TwiceArea),
            };
    }

    private static bool IsConvex(ReadOnlySpan<Point> corners)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            Point p = corners[i],
                q = corners[(i + 1) % corners.Length],
                r = corners[(i + 2) % corners.Length];
            if ((((q.X - p.X) * (r.Y - q.Y)) - ((q.Y - p.Y) * (r.X - q.X))).Sign <= 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// The outline begins at the origin, and the stated size is its own and two seams; one that no ruler has is rounded
    /// up to a step.
    /// </summary>
    private static bool Fits(Recipe recipe, ReadOnlySpan<Point> corners, Table table)
    {
        Surd left = corners[0].X,
            right = left,
            bottom = corners[0].Y,
            top = bottom;
        foreach (var corner in corners)
        {
            left = corner.X < left ? corner.X : left;
            right = corner.X > right ? corner.X : right;
            bottom = corner.Y < bottom ? corner.Y : bottom;
            top = corner.Y > top ? corner.Y : top;
        }

        return left.IsZero && bottom.IsZero && IsSize(recipe.Width, right, table) && IsSize(recipe.Height, top, table);
    }

    private static bool IsSize(Length size, Surd finished, Table table)
    {
        var exact = finished + (2 * (Surd)table.Seam);
        if (exact.IsRational)
        {
            return (Surd)size == exact;
        }

        var excess = (Surd)size - exact;
        return excess.Sign > 0 && excess < (Surd)table.RulerStep && (size / table.RulerStep).IsInteger;
    }
}
