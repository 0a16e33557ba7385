using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A border or sash cut in one piece along the selvage, where cloth gives least ([MM], [PWS]): longer than it is meant
/// to be, and cut to the quilt's own measure when it is sewn on.
/// </summary>
internal static class LengthwiseStrip
{
    public const string Kind = "lengthwise-strip";

    /// <summary>Borders are cut 2 to 4 in over and trimmed last; common practice, no source.</summary>
    public static readonly Length Over = Length.Inches(3);

    /// <summary>The pose with its length level.</summary>
    public static bool Fits(Region region) =>
        region.Items is [{ Lengthwise: true } only] && Shapes.IsRectangle(only.Shape) && region.Width >= region.Height;

    public static Program Make(PieceBook book, Seams seams, Letters letters, Region region)
    {
        var role = region.Items[0].Role!;
        Length length = seams.Rectangle(region.Width),
            width = seams.Rectangle(region.Height),
            cut = (length + Over).RoundUpTo(seams.RulerStep);
        var piece = book.Piece(
            role,
            width,
            cut,
            CutGrain.Lengthwise,
            Message.Of("use.strip-lengthwise"),
            Message.Of(
                "why.strip-lengthwise",
                ("finished", width - seams.Both),
                ("seams", seams.Both),
                ("width", width),
                ("length", length),
                ("over", cut - length),
                ("cut", cut)
            )
        );
        Surd s = seams.Allowance,
            end = (Surd)length - s;
        return new(
            Kind,
            [
                // Its length is its height on the cloth: a quarter turn lays it level.
                new Take("strip", piece.Id, Motion.QuarterTurns(1).Then(Motion.Shift((Surd)cut - s, -s))),
                new CutAlong("strip", new(new(end, 0), new(end, 1)), "strip", null),
            ],
            ["strip"],
            Message.Of("unit.lengthwise-strip", ("fabric", letters.Of(role)), ("length", length))
        );
    }
}
