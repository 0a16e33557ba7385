using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Setting triangles of a quilt on point, cut generous: side triangles from a square cut twice, corner triangles from
/// a square cut once, so that straight grain lies on the outside. What is over lies outside and is cut off when the
/// center is squared up, a seam allowance beyond the points ([TANI], [JOAN]).
/// </summary>
internal static class SettingTriangle
{
    public const string Side = "setting-side";
    public const string Corner = "setting-corner";

    /// <summary>How much larger the square is cut than it must be ("at least 1/4 in": [JOAN]; 1/2 in is common practice).</summary>
    private static readonly Length Generous = Length.Inches(0, 1, 2);

    public static Program? Make(PieceBook book, Seams seams, Letters letters, Region region)
    {
        if (region.Items is not [{ InSetting: true } only])
        {
            return null;
        }

        return SideOf(region, only) is { } apex ? MakeSide(book, seams, letters, region, only, apex)
            : LegOf(region, only) is { } leg ? MakeCorner(book, seams, letters, only, leg)
            : null;
    }

    /// <summary>
    /// The apex of a side triangle in the pose with its long side at the bottom: the one highest corner, with a
    /// right angle between the sides that fall from it at 45 degrees. The long side tells it from a corner triangle,
    /// whose bottom is no longer than it is high.
    /// </summary>
    private static Point? SideOf(Region region, Item item)
    {
        var tops = item.Shape.Corners.Where(c => c.Y == region.Height).ToArray();
        var bottom = item.Shape.Corners.Where(c => c.Y.IsZero).Select(c => c.X).ToArray();
        return tops is [var apex]
            && bottom.Length == 2
            && 2 * (bottom.Max() - bottom.Min()) > 3 * region.Height
            && item.Shape.Corners.All(c => Steep(apex - c))
            ? apex
            : null;

        static bool Steep(Point below) => below.Y >= (below.X.Sign < 0 ? -below.X : below.X);
    }

    /// <summary>The leg of a corner triangle in the pose with its right angle at the lower left, or null.</summary>
    private static Surd? LegOf(Region region, Item item)
    {
        // Both short sides lie on the outside.
        if (
            !item.Shape.Corners.Contains(Point.Origin)
            || item.Shape.Corners.Count(c => c.X.IsZero) != 2
            || item.Shape.Corners.Count(c => c.Y.IsZero) != 2
        )
        {
            return null;
        }

        // The long side is the line at 45 degrees that all corners lie on or under, and that two of them lie on.
        var leg = item.Shape.Corners.Max(c => c.X + c.Y);
        return item.Shape.Corners.Count(c => c.X + c.Y == leg) == 2 && leg >= region.Width && leg >= region.Height ? leg : null;
    }

    private static Program MakeSide(PieceBook book, Seams seams, Letters letters, Region region, Item item, Point apex)
    {
        var side = Oversize(seams, seams.QuarterSquare(2 * region.Height));
        var piece = Square(book, seams, item.Role!, side, Side, 2 * region.Height);
        Surd cut = side,
            half = cut / 2;
        Point low = new(0, 0),
            right = new(cut, 0),
            far = new(cut, cut),
            top = new(0, cut);
        var aboutCenter = Motion.Shift(-half, -half);
        // The raw right angle lies so that both short sides have exactly their seam allowance.
        var home = Motion.Shift(apex.X, apex.Y + (Surd.OfRoot2(1) * seams.Allowance));
        Verb Turned(string register, int turns) => new Turn(register, aboutCenter.Then(Motion.QuarterTurns(turns)).Then(home));
        return new(
            Side,
            [
                new Take("square", piece.Id, Motion.Identity),
                new CutAlong("square", new(low, far), "above", "below"),
                new CutAlong("above", new(right, top), "left", "top"),
                new CutAlong("below", new(right, top), "bottom", "right"),
                Turned("bottom", 0),
                Turned("left", 1),
                Turned("top", 2),
                Turned("right", 3),
            ],
            ["bottom", "left", "top", "right"],
            Message.Of("unit." + Side, ("fabric", letters.Of(item.Role!)))
        )
        {
            Outline = item.Shape,
        };
    }

    private static Program MakeCorner(PieceBook book, Seams seams, Letters letters, Item item, Surd leg)
    {
        var side = Oversize(seams, seams.HalfSquare(leg));
        var piece = Square(book, seams, item.Role!, side, Corner, leg);
        Surd cut = side,
            // The raw long side lies exactly a seam allowance beyond the finished one.
            low = ((leg + (Surd.OfRoot2(1) * seams.Allowance)) - cut) / 2,
            far = low + cut;
        return new(
            Corner,
            [
                new Take("square", piece.Id, Motion.Shift(low, low)),
                new CutAlong("square", new(new(far, low), new(far - 1, low + 1)), "one", "two"),
                new Turn("two", Motion.QuarterTurns(2).Then(Motion.Shift(far + low, far + low))),
            ],
            ["one", "two"],
            Message.Of("unit." + Corner, ("fabric", letters.Of(item.Role!)))
        )
        {
            Outline = item.Shape,
        };
    }

    /// <summary>Generous need not be exact: two ruler steps, so that sides and ends of the quilt share one size.</summary>
    private static Length Oversize(Seams seams, Length square) => (square + Generous).RoundUpTo(seams.RulerStep * 2);

    private static PieceBook.Entry Square(PieceBook book, Seams seams, string role, Length side, string kind, Surd finished) =>
        book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use." + kind),
            Message.Of(
                "why." + kind,
                ("finished", seams.Known(finished)),
                ("added", side - seams.Known(finished)),
                ("cut", side)
            )
        );
}
