using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>How pieces whose shape has a hand are laid before they are cut to shape.</summary>
public static class HandWords
{
    /// <summary>Null for a piece that is its own mirror image.</summary>
    public static Message? Of(QuiltPlan plan, CutPiece piece)
    {
        if (piece.Hand == Hand.Either)
        {
            return OfTwoSides(plan, piece);
        }

        if (plan.Pieces.FirstOrDefault(other => other.Id == piece.Mirror) is not { } mirror)
        {
            return Message.Of("hand.alone");
        }

        var pairs = Math.Min(piece.ToCut, mirror.ToCut);
        return Message.Of("hand.mirror", ("mirror", mirror.Label), ("pairs", pairs), ("more", piece.ToCut - pairs));
    }

    private static Message? OfTwoSides(QuiltPlan plan, CutPiece piece) =>
        plan.Fabrics.Any(fabric => fabric.TwoSided && fabric.Roles.Contains(piece.Role))
        && plan.Sewing.Recipes.Any(recipe =>
            recipe is { Kind: "cut-to-shape", Outline: { } outline }
            && Handedness.Of(outline.CounterClockwise()).Hand != Hand.Either
            && recipe.Verbs.OfType<Take>().Any(take => take.Piece == piece.Id)
        )
            ? Message.Of("hand.two-sided")
            : null;
}
