using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>
/// How many strips a double-fold binding takes: the perimeter and its allowance for corners and closing, plus what
/// the diagonal joins eat.
/// </summary>
/// <remarks>
/// A join at 45 degrees of strips w wide takes about w of length (own arithmetic); "perimeter + 10 in" covers corners
/// and closing only ([MCD], [FREE9P]).
/// </remarks>
internal static class BindingStrips
{
    public static BindingPlan Of(Quilt quilt, Design design, ClothTerms terms, PieceBook book)
    {
        var binding = quilt.Binding;
        var perimeter = (design.Width + design.Height) * 2;
        var strips = Count(perimeter + binding.Allowance, binding.StripWidth, terms.StripLength);
        var piece = book.Piece(
            binding.Role,
            terms.StripLength,
            binding.StripWidth,
            mayTurn: false,
            Message.Of("use.binding"),
            Message.Of(
                "why.binding",
                ("perimeter", perimeter),
                ("allowance", binding.Allowance),
                ("strips", strips),
                ("strip", terms.StripLength),
                ("joins", strips - 1),
                ("width", binding.StripWidth)
            )
        );
        return new(perimeter, binding.Allowance, binding.StripWidth, strips, piece.Id);
    }

    /// <summary>The least n with n strips, less (n − 1) joins of one strip width each, at least as long as wanted.</summary>
    public static int Count(Length wanted, Length width, Length stripLength) =>
        Math.Max(1, (int)((wanted - width) / (stripLength - width)).Ceiling());
}
