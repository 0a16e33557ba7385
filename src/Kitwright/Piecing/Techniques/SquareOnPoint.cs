using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A square standing on its corner, as in the middle of a square-in-a-square: cut straight at its finished side plus
/// two seams, rounded up to the ruler ([LES5]: 12 in block, center 8.485 + 1/2, cut 9), and turned by 45 degrees.
/// </summary>
internal static class SquareOnPoint
{
    public static bool Fits(Region region) =>
        region.Items is [{ Role: not null } only]
        && region.Width == region.Height
        && region.Width / 2 is var half
        && Shapes.Same(
            only.Shape,
            [new(half, 0), new(region.Width, half), new(half, region.Width), new(0, half)]
        );

    public static Program Make(PieceBook book, Seams seams, Letters letters, Region region)
    {
        var role = region.Items[0].Role!;
        var finished = region.Width / Surd.OfRoot2(1);
        var side = seams.OnRuler(finished);
        var piece = book.Piece(
            role,
            side,
            side,
            mayTurn: true,
            Message.Of("use.square-on-point"),
            Message.Of("why.square-on-point", ("diagonal", seams.Known(region.Width)), ("seams", seams.Both), ("cut", side))
        );
        Surd half = (Surd)side / 2,
            middle = region.Width / 2;
        var motion = Motion.Shift(-half, -half).Then(Motion.EighthTurns(1)).Then(Motion.Shift(middle, middle));
        return new(
            "square-on-point",
            [new Take("unit", piece.Id, motion)],
            ["unit"],
            Message.Of("unit.square-on-point", ("fabric", letters.Of(role)))
        )
        {
            Outline = region.Items[0].Shape,
        };
    }
}
