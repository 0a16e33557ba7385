using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>A rectangle of one fabric: finished size plus a seam allowance on every side ([KC], [GMG]).</summary>
internal static class PlainPatch
{
    public static PieceBook.Entry Piece(PieceBook book, Seams seams, Region region) =>
        seams.RectanglePiece(
            book,
            region.Items[0].Role!,
            region.Width,
            region.Height,
            Message.Of(region.Width == region.Height ? "use.square" : "use.rectangle")
        );

    public static Take Take(string into, PieceBook book, Seams seams, Region region) =>
        PieceBook.TakeAt(
            into,
            Piece(book, seams, region),
            seams.Rectangle(region.Width),
            region.Bounds.Low.X - seams.Allowance,
            region.Bounds.Low.Y - seams.Allowance
        );
}
