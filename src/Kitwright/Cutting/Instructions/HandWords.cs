using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Cutting.Instructions;

/// <summary>How pieces whose shape has a hand are laid before they are cut to shape.</summary>
public static class HandWords
{
    /// <summary>Null for a piece that may lie either side up.</summary>
    public static Message? Of(QuiltPlan plan, CutPiece piece)
    {
        if (piece.Hand == Hand.Either)
        {
            return null;
        }

        if (plan.Pieces.FirstOrDefault(other => other.Id == piece.Mirror) is not { } mirror)
        {
            return Message.Of("hand.alone");
        }

        var pairs = Math.Min(piece.ToCut, mirror.ToCut);
        return Message.Of("hand.mirror", ("mirror", mirror.Label), ("pairs", pairs), ("more", piece.ToCut - pairs));
    }
}
