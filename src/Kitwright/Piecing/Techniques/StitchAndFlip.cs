using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A rectangle whose corners are covered by squares, each sewn on its diagonal, trimmed a seam allowance beyond and
/// flipped open: flying geese (two corners of a two-to-one rectangle) and snowball corners. Every piece is cut at its
/// finished size plus two seams ([APQ-FG], [PWT1]).
/// </summary>
internal static class StitchAndFlip
{
    /// <summary>A corner of the rectangle, counted counterclockwise from the lower left, and the triangle's finished leg.</summary>
    internal sealed record Corner(int Index, Surd Leg, string Role);

    public static bool Fits(Region region, out string body, out ImmutableArray<Corner> corners)
    {
        body = "";
        corners = [];
        if (region.Items.Length is < 2 or > 5 || !region.IsRectangle || region.Items.Any(i => i.Role is null))
        {
            return false;
        }

        var found = ImmutableArray.CreateBuilder<Corner>();
        foreach (var item in region.Items)
        {
            if (CornerOf(region, item) is { } corner)
            {
                found.Add(corner);
            }
            else if (body.Length > 0)
            {
                return false;
            }
            else
            {
                body = item.Role!;
            }
        }

        corners = [.. found.OrderBy(c => c.Index)];
        return body.Length > 0 && corners.Select(c => c.Index).Distinct().Count() == corners.Length;
    }

    private static Corner? CornerOf(Region region, Item item)
    {
        if (item.Shape.Corners.Length != 3)
        {
            return null;
        }

        for (var index = 0; index < 4; index++)
        {
            var (at, right, up) = Frame(region, index);
            if (!item.Shape.Corners.Contains(at))
            {
                continue;
            }

            foreach (var corner in item.Shape.Corners.Where(c => c != at))
            {
                var leg = Point.Dot(corner - at, right);
                if (leg.Sign > 0 && Shapes.Same(item.Shape, [at, at + (right * leg), at + (up * leg)]))
                {
                    return new(index, leg, item.Role!);
                }
            }
        }

        return null;
    }

    /// <summary>The corner point and the unit steps inward along its two sides, clockwise side first.</summary>
    private static (Point At, Point Right, Point Up) Frame(Region region, int index)
    {
        Surd w = region.Width,
            h = region.Height;
        return index switch
        {
            0 => (new(0, 0), new(1, 0), new(0, 1)),
            1 => (new(w, 0), new(0, 1), new(-1, 0)),
            2 => (new(w, h), new(-1, 0), new(0, -1)),
            _ => (new(0, h), new(0, -1), new(1, 0)),
        };
    }

    public static Program Make(
        PieceBook book,
        Seams seams,
        Letters letters,
        Region region,
        string body,
        ImmutableArray<Corner> corners,
        bool trimmed = false
    )
    {
        var goose = IsGoose(region, corners);
        // An eighth of an inch on every side, to be trimmed.
        var over = trimmed ? seams.Generous : Length.Zero;
        var piece = Piece(book, seams, body, region.Width, region.Height, over, Message.Of(goose ? "use.goose" : "use.snowball"));
        Surd s = seams.Allowance,
            low = -s - (Surd)over;
        var verbs = new List<Verb> { PieceBook.TakeAt("unit", piece, seams.Rectangle(region.Width) + (over * 2), low, low) };
        foreach (var corner in corners)
        {
            var square = Piece(book, seams, corner.Role, corner.Leg, corner.Leg, over, Message.Of(goose ? "use.sky" : "use.corner"));
            AddCorner(verbs, seams, Frame(region, corner.Index), corner, square, over);
        }

        if (trimmed)
        {
            verbs.Add(new Trim("unit", Polygon.Rectangle(-s, -s, region.Width + s, region.Height + s), Counted: true));
        }

        var name = goose
            ? Message.Of("unit.goose", ("goose", letters.Of(body)), ("sky", letters.Of(corners[0].Role)))
            : Message.Of(
                "unit.snowball",
                ("body", letters.Of(body)),
                ("corner", letters.Of(corners[0].Role)),
                ("corners", corners.Length)
            );
        return new(goose ? "goose-flip" : "snowball", [.. verbs], ["unit"], name);
    }

    /// <param name="over">How much larger on each side than its finished size and seams.</param>
    private static PieceBook.Entry Piece(PieceBook book, Seams seams, string role, Surd width, Surd height, Length over, Message use)
    {
        if (over == Length.Zero)
        {
            return seams.RectanglePiece(book, role, width, height, use);
        }

        Length w = seams.Rectangle(width),
            h = seams.Rectangle(height);
        return book.Piece(
            role,
            w + (over * 2),
            h + (over * 2),
            mayTurn: true,
            use,
            Message.Of(
                "why.flip-trimmed",
                ("width", Length.Max(w, h) - seams.Both),
                ("height", Length.Min(w, h) - seams.Both),
                ("added", seams.Both + (over * 2)),
                ("cutWidth", Length.Max(w, h) + (over * 2)),
                ("cutHeight", Length.Min(w, h) + (over * 2))
            )
        );
    }

    private static void AddCorner(
        List<Verb> verbs,
        Seams seams,
        (Point At, Point Right, Point Up) frame,
        Corner corner,
        PieceBook.Entry square,
        Length over
    )
    {
        var (at, right, up) = frame;
        Surd s = seams.Allowance,
            side = square.Width,
            waste = corner.Leg - (Surd.OfRoot2(1) * s);
        // The left of both lines is the body's side.
        var seam = new Line(at + (up * corner.Leg), at + (right * corner.Leg));
        var trim = new Line(at + (up * waste), at + (right * waste));
        var raw = at - ((right + up) * (s + (Surd)over));
        var opposite = raw + ((right + up) * side);
        string register = $"corner{corner.Index}",
            pair = $"pair{corner.Index}";
        verbs.Add(PieceBook.TakeAt(register, square, square.Width, Min(raw.X, opposite.X), Min(raw.Y, opposite.Y)));
        verbs.Add(new Lay(pair, "unit", register, Motion.Reflect(seam)));
        verbs.Add(new Sew(pair, seam));
        verbs.Add(new CutAlong(pair, trim, "unit", null));
        verbs.Add(new Press("unit", PressToward.Top));
    }

    private static Surd Min(Surd x, Surd y) => x < y ? x : y;

    /// <summary>Four corners that meet leave a square on point: cut as such, it wastes no cloth under the corners.</summary>
    public static bool IsSquareInSquare(Region region, ImmutableArray<Corner> corners) =>
        corners.Length == 4 && corners.All(c => 2 * c.Leg == region.Width && region.Width == region.Height);

    public static bool IsGoose(Region region, ImmutableArray<Corner> corners) =>
        corners.Length == 2
        && corners.All(c => c.Leg == Min(region.Width, region.Height))
        && (region.Width == 2 * region.Height || region.Height == 2 * region.Width);
}
