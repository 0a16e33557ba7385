using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Any convex patch that no other technique knows: a rectangle round it, cut along each of its edges a seam allowance
/// outside, by ruler or template. A shape that differs from its mirror image has a hand.
/// </summary>
internal static class CutToShape
{
    public const string Kind = "cut-to-shape";
    public const string HandedKind = "cut-to-shape-handed";

    /// <summary>
    /// Offsets of slanted edges leave the field of coordinates: they are rounded up to this share of the edge's own
    /// step, a few thousandths of an inch at most.
    /// </summary>
    private const int Fine = 4096;

    /// <summary>Where the rectangle begins, in inches; no ruler has finer lines.</summary>
    private static readonly Length Grid = Length.Inches(0, 1, 64);

    public static bool Fits(Region region) =>
        region.Items is [{ Role: not null } only] && !Shapes.IsRectangle(only.Shape) && IsConvex(Straightened(only.Shape));

    /// <summary>Without the corners at which only a neighbor has one: the edge is cut straight on.</summary>
    private static Polygon Straightened(Polygon shape) =>
        new(
            [
                .. shape.Corners.Where(
                    (corner, i) =>
                    {
                        var count = shape.Corners.Length;
                        return !Point.Cross(corner - shape.Corners[(i + count - 1) % count], shape.Corners[(i + 1) % count] - corner).IsZero;
                    }
                ),
            ]
        );

    /// <param name="twoSided">Whether the cloth has no wrong side: then no shape of it has a hand.</param>
    public static Program Make(PieceBook book, Seams seams, Letters letters, Region region, bool twoSided)
    {
        var item = region.Items[0] with { Shape = Straightened(region.Items[0].Shape) };
        Line[] offsets = [.. Edges(item.Shape).Select(edge => Outward(edge, seams.Allowance))];
        Line[] blunts = [.. item.Shape.Corners.Select((_, i) => Blunt(item.Shape, i, seams.Allowance)).OfType<Line>()];
        Line[] edges = [.. offsets, .. blunts];
        var corners = blunts.Aggregate(
            ImmutableArray.CreateRange(offsets.Select((edge, i) => Crossing(offsets[(i + offsets.Length - 1) % offsets.Length], edge))),
            LeftOf
        );
        Length left = Down(corners.Min(c => c.X)),
            bottom = Down(corners.Min(c => c.Y)),
            width = (corners.Max(c => c.X) - (Surd)left).RoundUpTo(seams.RulerStep),
            height = (corners.Max(c => c.Y) - (Surd)bottom).RoundUpTo(seams.RulerStep);
        // Where only rounding makes a shape lopsided, it may lie either side up.
        var hand = twoSided || Handedness.Of(new(corners)).Hand == Hand.Either ? default : Handedness.Of(item.Shape);
        var handed = hand.Hand != Hand.Either;
        var piece = book.Piece(
            item.Role!,
            width,
            height,
            CutGrain.Straight,
            Message.Of("use.cut-to-shape"),
            Message.Of("why.cut-to-shape", ("seam", seams.Allowance), ("width", width), ("height", height)),
            hand
        );
        var verbs = new List<Verb> { PieceBook.TakeAt("unit", piece, width, left, bottom) };
        ImmutableArray<Point> rest = Polygon.Rectangle(left, bottom, left + width, bottom + height).Corners;
        foreach (var edge in edges)
        {
            // An edge that lies on the rectangle's own, or beyond what is left, needs no cut.
            if (rest.Any(corner => edge.SideOf(corner) < 0))
            {
                verbs.Add(new CutAlong("unit", edge, "unit", null));
                rest = LeftOf(rest, edge);
            }
        }

        return new(
            handed ? HandedKind : Kind,
            [.. verbs],
            ["unit"],
            Message.Of(IsDiamond(item.Shape) ? "unit.diamond" : "unit.cut-to-shape", ("fabric", letters.Of(item.Role!)), ("corners", item.Shape.Corners.Length))
        )
        {
            Outline = item.Shape,
            IsRagged = true,
        };
    }

    private static bool IsDiamond(Polygon shape) =>
        shape.Corners.Length == 4 && Edges(shape).Select(edge => Point.Dot(edge.Step, edge.Step)).Distinct().Count() == 1;

    private static Length Down(Surd at) => Grid * (at / (Surd)Grid).Floor();

    private static IEnumerable<Line> Edges(Polygon shape) =>
        shape.Corners.Select((corner, i) => new Line(corner, shape.Corners[(i + 1) % shape.Corners.Length]));

    /// <summary>The edge, which has the shape on its left, shifted to its right by the seam allowance or a little more.</summary>
    private static Line Outward(Line edge, Length seam)
    {
        var step = edge.Step;
        Point away = new(step.Y, -step.X);
        Surd share;
        if (step.X.IsZero || step.Y.IsZero)
        {
            var length = step.X.IsZero ? step.Y : step.X;
            share = (Surd)seam / (length.Sign < 0 ? -length : length);
        }
        else
        {
            // The least m with (m / Fine)² · |step|² no less than seam².
            var square = Point.Dot(step, step);
            long m = (long)Math.Ceiling(seam.InInches.ToDouble() * Fine / Math.Sqrt(square.ToDouble()));
            while ((Surd)new Rational(m * m, (long)Fine * Fine) * square < (Surd)(seam.InInches * seam.InInches))
            {
                m++;
            }

            share = new Rational(m, Fine);
        }

        return new(edge.From + (away * share), edge.To + (away * share));
    }

    /// <summary>
    /// Where a corner is sharper than 22 1/2 degrees its long point would lean along the seam and lie under no neighbor's
    /// allowance: it is cut off square to its middle, two seam allowances beyond the corner, where every seam's end still
    /// has its whole allowance. Null at any other corner.
    /// </summary>
    /// <remarks>The line's direction only needs to be about square: it is rounded, and no size rests on it.</remarks>
    private static Line? Blunt(Polygon shape, int index, Length seam)
    {
        var corners = shape.Corners;
        var corner = corners[index];
        Point into = corner - corners[(index + corners.Length - 1) % corners.Length],
            on = corners[(index + 1) % corners.Length] - corner;
        Surd turn = Point.Cross(into, on),
            back = -Point.Dot(into, on);
        if (back.Sign <= 0 || 4 * (back * back) <= 25 * (turn * turn))
        {
            return null;
        }

        var (inX, inY) = Unit(into);
        var (onX, onY) = Unit(on);
        double x = inX - onX,
            y = inY - onY,
            length = Math.Sqrt((x * x) + (y * y));
        Point middle = new(new Rational((long)Math.Round(x / length * Fine), Fine), new Rational((long)Math.Round(y / length * Fine), Fine));
        var at = corner + (middle * (Surd)(seam * 2));
        return new(at, at + new Point(-middle.Y, middle.X));
    }

    private static (double X, double Y) Unit(Point step)
    {
        double x = step.X.ToDouble(),
            y = step.Y.ToDouble(),
            length = Math.Sqrt((x * x) + (y * y));
        return (x / length, y / length);
    }

    private static Point Crossing(Line p, Line q)
    {
        var share = Point.Cross(q.From - p.From, q.Step) / Point.Cross(p.Step, q.Step);
        return p.From + (p.Step * share);
    }

    private static ImmutableArray<Point> LeftOf(ImmutableArray<Point> corners, Line line)
    {
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < corners.Length; i++)
        {
            Point p = corners[i],
                q = corners[(i + 1) % corners.Length];
            if (line.SideOf(p) >= 0)
            {
                kept.Add(p);
            }

            if (line.SideOf(p) * line.SideOf(q) < 0)
            {
                kept.Add(Crossing(new(p, q), line));
            }
        }

        return kept.ToImmutable();
    }

    private static bool IsConvex(Polygon shape)
    {
        var corners = shape.Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            Point into = corners[(i + 1) % corners.Length] - corners[i],
                on = corners[(i + 2) % corners.Length] - corners[(i + 1) % corners.Length];
            if (Point.Cross(into, on).Sign <= 0)
            {
                return false;
            }
        }

        return true;
    }
}
