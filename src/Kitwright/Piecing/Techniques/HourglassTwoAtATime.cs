using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Hourglass units of two fabrics, two at a time: half-square units from squares of the finished side + 1 1/4 in, laid
/// right sides together with unlike fabrics facing, sewn a seam allowance to either side of the other diagonal and
/// cut on it ([APQ-OS], [APQ-HG]: 3 1/2 in finished from 4 3/4 in squares).
/// </summary>
internal static class HourglassTwoAtATime
{
    public const string Kind = "hourglass-two";

    public static bool Fits(Region region, out string upright, out string level)
    {
        upright = level = "";
        if (region.Items.Length != 4 || region.Width != region.Height || region.Items.Any(i => i.Role is null))
        {
            return false;
        }

        Surd f = region.Width,
            half = f / 2;
        Point middle = new(half, half);
        string? Role(Point p, Point q) =>
            region.Items.FirstOrDefault(i => Shapes.Same(i.Shape, [p, q, middle]))?.Role;
        Point a = new(0, 0),
            b = new(f, 0),
            c = new(f, f),
            d = new(0, f);
        if (Role(a, b) is not { } bottom || Role(b, c) is not { } right || Role(c, d) != bottom || Role(d, a) != right)
        {
            return false;
        }

        (upright, level) = (bottom, right);
        return true;
    }

    /// <param name="upright">The fabric at the top and bottom.</param>
    /// <param name="level">The fabric at the left and right.</param>
    /// <param name="trimmed">Cut generous, and each unit trimmed to size.</param>
    public static Program Make(PieceBook book, Seams seams, Letters letters, Surd finished, string upright, string level, bool trimmed)
    {
        var side = trimmed ? seams.QuarterSquare(finished) + (seams.Generous * 2) : seams.QuarterSquare(finished);
        Surd cut = side,
            s = seams.Allowance,
            across = Surd.OfRoot2(1) * s,
            inner = cut - across,
            excess = inner - across - finished - (2 * s);
        var (below, above) = (Square(book, seams, upright, finished, side, trimmed), Square(book, seams, level, finished, side, trimmed));
        Point origin = new(0, 0),
            step = new(-across / 2, across / 2);
        Line rising = new(origin, new(cut, cut)),
            // Its step is of rational square, so that its length lies in the field of coordinates.
            falling = new(new(inner, 0), new(inner - 1, 1));
        Point aside = new(across / 2, across / 2);
        var low = -s - (excess / 2);
        List<Verb> verbs =
        [
            new Take("a", below.Id, Motion.Identity),
            new Take("b", above.Id, Motion.Identity),
            new Lay("pair", "a", "b", Motion.Reflect(rising)),
            new Sew("pair", new(rising.From + step, rising.To + step)),
            new Sew("pair", new(rising.From - step, rising.To - step)),
            new CutAlong("pair", rising, "one", "two"),
            new Press("one", PressToward.Bottom),
            new Press("two", PressToward.Bottom),
            new Turn("one", Motion.Shift(0, -across)),
            new Turn("two", Motion.QuarterTurns(2).Then(Motion.Shift(cut, inner))),
            new Lay("pair", "one", "two", Motion.Reflect(new(origin, new(1, 1)))),
            new Sew("pair", new(falling.From + aside, falling.To + aside)),
            new Sew("pair", new(falling.From - aside, falling.To - aside)),
            new CutAlong("pair", falling, "two", "one"),
            new Press("one", PressToward.Top),
            new Press("two", PressToward.Top),
            new Turn("one", Motion.Shift(low - across, low - across)),
            new Turn("two", Motion.QuarterTurns(1).Then(Motion.Shift(inner - across + low, low))),
        ];
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
            Message.Of("unit.hourglass", ("first", letters.Of(upright)), ("second", letters.Of(level)))
        );
    }

    private static PieceBook.Entry Square(PieceBook book, Seams seams, string role, Surd finished, Length side, bool trimmed) =>
        book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use.hourglass-two"),
            trimmed
                ? Message.Of("why.half-square-trimmed", ("finished", seams.Known(finished)), ("added", side - seams.Known(finished)), ("cut", side), ("unit", seams.Rectangle(finished)), ("units", 2))
                : Message.Of("why.hourglass", ("finished", seams.Known(finished)), ("added", side - seams.Known(finished)), ("cut", side))
        );
}
