using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Two squares right sides together, sewn a seam allowance to either side of the diagonal, cut on it: two half-square
/// triangle units. The squares are the finished side plus 7/8 in ([QMK], [NHQ]).
/// </summary>
internal static class HalfSquareTwoAtATime
{
    public const string Kind = "half-square-two";

    /// <summary>
    /// Recognizes a square of two triangles in the pose where the seam rises to the right; the other pose is reached
    /// by turning the region.
    /// </summary>
    public static bool Fits(Region region, out string upper, out string lower)
    {
        upper = lower = "";
        if (region.Items.Length != 2 || region.Width != region.Height || region.Items.Any(i => i.Role is null))
        {
            return false;
        }

        var f = region.Width;
        Point a = new(0, 0),
            c = new(f, f);
        var up = region.Items.FirstOrDefault(i => Shapes.Same(i.Shape, [a, c, new(0, f)]));
        var low = region.Items.FirstOrDefault(i => Shapes.Same(i.Shape, [a, new(f, 0), c]));
        if (up is null || low is null)
        {
            return false;
        }

        (upper, lower) = (up.Role!, low.Role!);
        return true;
    }

    /// <param name="trimmed">Cut generous, and each unit trimmed to size.</param>
    public static Program Make(PieceBook book, Seams seams, Letters letters, Surd finished, string upper, string lower, bool trimmed)
    {
        var side = trimmed ? seams.HalfSquare(finished) + seams.Generous : seams.HalfSquare(finished);
        Surd cut = side,
            s = seams.Allowance,
            across = Surd.OfRoot2(1) * s,
            excess = cut - across - finished - (2 * s);
        var (below, above) = (Square(book, seams, upper, finished, side, trimmed), Square(book, seams, lower, finished, side, trimmed));
        var half = across / 2;
        Point origin = new(0, 0),
            far = new(cut, cut),
            left = new(-half, half);
        var diagonal = new Line(origin, far);
        // Centers the small excess of the rounded square, so that the seam stays on the corners.
        var low = -s - (excess / 2);
        var verbs = new List<Verb>
        {
            new Take("a", below.Id, Motion.Identity),
            new Take("b", above.Id, Motion.Identity),
            new Lay("pair", "a", "b", Motion.Reflect(diagonal)),
            new Sew("pair", new(origin + left, far + left)),
            new Sew("pair", new(origin - left, far - left)),
            new CutAlong("pair", diagonal, "one", "two"),
            new Press("one", PressToward.Top),
            new Press("two", PressToward.Top),
            new Turn("one", Motion.Shift(low, low - across)),
            new Turn("two", Motion.QuarterTurns(2).Then(Motion.Shift(cut + low, cut - across + low))),
        };
        if (excess.Sign > 0)
        {
            var unit = Polygon.Rectangle(-s, -s, finished + s, finished + s);
            verbs.Add(new Trim("one", unit, trimmed));
            verbs.Add(new Trim("two", unit, trimmed));
        }

        return new(
            Kind,
            [.. verbs],
            ["one", "two"],
            Message.Of("unit.half-square", ("first", letters.Of(upper)), ("second", letters.Of(lower)))
        );
    }

    private static PieceBook.Entry Square(PieceBook book, Seams seams, string role, Surd finished, Length side, bool trimmed)
    {
        var known = seams.Known(finished);
        return book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use.half-square-two"),
            trimmed
                ? Message.Of("why.half-square-trimmed", ("finished", known), ("added", side - known), ("cut", side), ("unit", seams.Rectangle(finished)), ("units", 2))
                : Message.Of("why.half-square", ("finished", known), ("added", side - known), ("cut", side))
        );
    }
}
