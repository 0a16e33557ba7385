using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A round: plain strips joined to one side of a pieced unit, or to two opposite ones, as a log cabin grows. Cut
/// generous they reach beyond the unit, which is then trimmed to size, measured from the seam sewn last.
/// </summary>
internal static class PlainRound
{
    public static bool Fits(Region region, StraightCuts cuts) =>
        cuts.Parts.Length is 2 or 3
        && region.Items.All(item => item is { Role: not null, InBorder: false, InSetting: false })
        && (cuts.Lines[0].Step.X.IsZero || cuts.Lines[0].Step.Y.IsZero)
        && cuts.Parts.Count(part => part.Items.Length > 1) == 1
        && (cuts.Parts.Length == 2 || cuts.Parts[1].Items.Length > 1)
        && cuts.Parts.All(part => part.Items.Length > 1 ? IsJoined(part) : Shapes.IsRectangle(part.Items[0].Shape))
        && region.IsOnRuler;

    /// <summary>A row of squares and points is no round: what the strips go round is itself joined.</summary>
    private static bool IsJoined(Region part) =>
        part.Items.Length > UnitWays.MostInOneUnit
        || StraightCuts.Of(part) is { } cuts && (cuts.Lines[0].Step.X.IsZero || cuts.Lines[0].Step.Y.IsZero);

    /// <summary>How much wider the strips are cut.</summary>
    public static Length Generous(string technique, Seams seams) => GenerousRounds.Over(technique, seams.Allowance, seams.RulerStep);

    /// <param name="isFirst">Whether the strip lies below or left of the unit.</param>
    /// <param name="upright">Whether the unit grows across rather than up.</param>
    public static Take Strip(string into, PieceBook book, Seams seams, Region strip, Length generous, bool isFirst, bool upright)
    {
        Length width = seams.Rectangle(strip.Width),
            height = seams.Rectangle(strip.Height),
            before = isFirst ? generous : Length.Zero;
        Length cutWidth = upright ? width + generous : width,
            cutHeight = upright ? height : height + generous;
        var narrow = upright ? width : height;
        var piece = book.Piece(
            strip.Items[0].Role!,
            cutWidth,
            cutHeight,
            mayTurn: true,
            Message.Of("use.rectangle"),
            Message.Of(
                "why.round",
                ("width", narrow - seams.Both),
                ("length", (upright ? height : width) - seams.Both),
                ("seams", seams.Both),
                ("generous", generous),
                ("cutWidth", narrow + generous),
                ("cutLength", upright ? height : width)
            )
        );
        return PieceBook.TakeAt(
            into,
            piece,
            cutWidth,
            strip.Bounds.Low.X - seams.Allowance - (Surd)(upright ? before : Length.Zero),
            strip.Bounds.Low.Y - seams.Allowance - (Surd)(upright ? Length.Zero : before)
        );
    }
}
