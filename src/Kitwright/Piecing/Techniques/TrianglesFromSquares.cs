using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// Single triangles with two equal sides at a right angle. Where the short sides lie with the grain, a square is cut
/// once on the diagonal (finished short side + 7/8 in); where the long side does, it is cut twice (finished long side
/// + 1 1/4 in): straight grain belongs on the outside ([KC], [OTD], [TRANT], [GMG]).
/// </summary>
/// <remarks>What rounding adds lies under the seam of the slanted side, or of the two short sides.</remarks>
internal static class TrianglesFromSquares
{
    public const string Half = "half-square-triangle";
    public const string Quarter = "quarter-square-triangle";

    /// <summary>The pose with the right angle at the lower left.</summary>
    public static bool IsHalf(Region region) =>
        region.Items is [{ Role: not null } only]
        && region.Width == region.Height
        && Shapes.Same(only.Shape, [new(0, 0), new(region.Width, 0), new(0, region.Width)]);

    /// <summary>The pose with the long side at the bottom.</summary>
    public static bool IsQuarter(Region region) =>
        region.Items is [{ Role: not null } only]
        && region.Width == 2 * region.Height
        && Shapes.Same(only.Shape, [new(0, 0), new(region.Width, 0), new(region.Height, region.Height)]);

    public static Program MakeHalf(PieceBook book, Seams seams, Letters letters, Region region)
    {
        var role = region.Items[0].Role!;
        var leg = region.Width;
        var side = seams.HalfSquare(leg);
        var piece = book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use." + Half),
            Message.Of("why.half-square-triangle", ("finished", seams.Known(leg)), ("added", side - seams.Known(leg)), ("cut", side))
        );
        Surd s = seams.Allowance,
            far = (Surd)side - s;
        Verb[] verbs =
        [
            new Take("square", piece.Id, Motion.Shift(-s, -s)),
            new CutAlong("square", new(new(far, -s), new(-s, far)), "one", "two"),
            new Turn("two", Motion.QuarterTurns(2).Then(Motion.Shift(far - s, far - s))),
        ];
        return new(Half, [.. verbs], ["one", "two"], Message.Of("unit." + Half, ("fabric", letters.Of(role)))) { Outline = region.Items[0].Shape };
    }

    public static Program MakeQuarter(PieceBook book, Seams seams, Letters letters, Region region)
    {
        var role = region.Items[0].Role!;
        var side = seams.QuarterSquare(region.Width);
        var known = seams.Known(region.Width);
        var piece = book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use." + Quarter),
            Message.Of("why.quarter-square-triangle", ("finished", known), ("added", side - known), ("cut", side))
        );
        Surd s = seams.Allowance,
            cut = side,
            half = cut / 2;
        Point low = new(0, 0),
            right = new(cut, 0),
            far = new(cut, cut),
            top = new(0, cut);
        var aboutCenter = Motion.Shift(-half, -half);
        var home = Motion.Shift(region.Width / 2, half - s);
        Verb Turned(string register, int turns) => new Turn(register, aboutCenter.Then(Motion.QuarterTurns(turns)).Then(home));
        Verb[] verbs =
        [
            new Take("square", piece.Id, Motion.Identity),
            new CutAlong("square", new(low, far), "above", "below"),
            new CutAlong("above", new(right, top), "left", "top"),
            new CutAlong("below", new(right, top), "bottom", "right"),
            Turned("bottom", 0),
            Turned("left", 1),
            Turned("top", 2),
            Turned("right", 3),
        ];
        return new(
            Quarter,
            [.. verbs],
            ["bottom", "left", "top", "right"],
            Message.Of("unit." + Quarter, ("fabric", letters.Of(role)))
        )
        {
            Outline = region.Items[0].Shape,
        };
    }
}
