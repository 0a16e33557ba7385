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
/// holds its outer edges.
/// </summary>
internal static class OutlineRule
{
    public static Finding? Check(Recipe recipe, Polygon stated, Face[] faces, Length seam)
    {
        var place = recipe.Id.Value;
        if (SimplePolygon.Fault(stated.Corners.AsSpan()) is not null || !IsConvex(stated))
        {
            return Finding.Of("check.sewing.outline", place);
        }

        var outline = new Shape([.. stated.Corners]);
        if (!FitsBox(recipe, stated, seam))
        {
            return Finding.Of("check.sewing.outline", place);
        }

        var inside = Surd.Zero;
        foreach (var face in faces)
        {
            inside += face.Shape.Within(outline)?.TwiceArea ?? Surd.Zero;
        }

        return inside == outline.TwiceArea
            ? null
            : Finding.Of("check.sewing.outline-open", place) with
            {
                Measured = Say.Area(inside),
                Expected = Say.Area(outline.TwiceArea),
            };
    }

    private static bool IsConvex(Polygon polygon)
    {
        var corners = polygon.Corners;
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

    private static bool FitsBox(Recipe recipe, Polygon polygon, Length seam)
    {
        Surd Span(Func<Point, Surd> of) => polygon.Corners.Max(of) - polygon.Corners.Min(of);
        bool AtZero(Func<Point, Surd> of) => polygon.Corners.Min(of).IsZero;

        // A size that no ruler has is stated rounded up, by less than a step.
        bool Fits(Length size, Surd span) => span + (2 * (Surd)seam) is var wanted && (Surd)size >= wanted && (Surd)size - wanted < Length.Inches(0, 1, 8);
        return AtZero(p => p.X)
            && AtZero(p => p.Y)
            && Fits(recipe.Width, Span(p => p.X))
            && Fits(recipe.Height, Span(p => p.Y));
    }
}
