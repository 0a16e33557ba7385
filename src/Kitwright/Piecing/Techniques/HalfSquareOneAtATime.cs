using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Two squares right sides together, sewn on the diagonal, trimmed a seam allowance beyond and flipped open: one
/// half-square triangle unit. The squares are the finished side plus two seams, as for any stitched corner ([APQ-FG],
/// [PWT1]), so that squares that are cut already can be used; generous and trimmed is common practice, no source.
/// </summary>
internal static class HalfSquareOneAtATime
{
    public const string Kind = "half-square-one";

    public static Program Make(Making m, Surd finished, string upper, string lower, bool trimmed)
    {
        var seams = m.Seams;
        var side = trimmed ? seams.Rectangle(finished) + seams.Generous : seams.Rectangle(finished);
        Surd cut = side,
            s = seams.Allowance,
            excess = cut - finished - (2 * s),
            // What is over lies evenly all round, so that the seam stays on the corners.
            low = -s - (excess / 2);
        var half = Surd.OfRoot2(1) * s / 2;
        Line seam = new(new(0, 0), new(1, 1)),
            trim = new(new(half, -half), new(half + 1, 1 - half));
        var (below, above) = (Square(m, upper, finished, side, trimmed), Square(m, lower, finished, side, trimmed));
        List<Verb> verbs =
        [
            new Take("unit", below.Id, Motion.Shift(low, low)),
            new Take("flap", above.Id, Motion.Shift(low, low)),
            new Lay("pair", "unit", "flap", Motion.Reflect(seam)),
            new Sew("pair", seam),
            new CutAlong("pair", trim, "unit", null),
            new Press("unit", PressToward.Top),
        ];
        if (excess.Sign > 0)
        {
            verbs.Add(new Trim("unit", Polygon.Rectangle(-s, -s, finished + s, finished + s), trimmed));
        }

        return new(Kind, [.. verbs], ["unit"], Message.Of("unit.half-square", ("first", m.Letters.Of(upper)), ("second", m.Letters.Of(lower))));
    }

    private static PieceBook.Entry Square(Making m, string role, Surd finished, Length side, bool trimmed)
    {
        var known = m.Seams.Known(finished);
        return m.Book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use.half-square-one"),
            trimmed
                ? Message.Of("why.half-square-trimmed", ("finished", known), ("added", side - known), ("cut", side), ("unit", m.Seams.Rectangle(finished)), ("units", 1))
                : Message.Of("why.square", ("finished", side - m.Seams.Both), ("seams", m.Seams.Both), ("cut", side))
        );
    }
}
