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
    /// <summary>Strips along the selvage: one for each side, about ([FE] cuts binding beside lengthwise borders).</summary>
    private const int AlongTheSelvage = 4;

    public static BindingPlan Of(Quilt quilt, Design design, ClothTerms terms, PieceBook book)
    {
        var perimeter = (design.Width + design.Height) * 2;
        var wanted = perimeter + quilt.Binding.Allowance;
        return quilt.Binding.Grain switch
        {
            StripGrain.Bias => BiasSquare.Of(quilt, perimeter, terms, book),
            StripGrain.Lengthwise => Straight(
                quilt.Binding,
                perimeter,
                AlongTheSelvage,
                ((wanted + (quilt.Binding.StripWidth * (AlongTheSelvage - 1))) / AlongTheSelvage).RoundUpTo(quilt.RulerStep),
                CutGrain.Lengthwise,
                book
            ),
            _ => Straight(
                quilt.Binding,
                perimeter,
                Count(wanted, quilt.Binding.StripWidth, terms.StripLength),
                terms.StripLength,
                CutGrain.Crosswise,
                book
            ),
        };
    }

    private static BindingPlan Straight(Binding binding, Length perimeter, int strips, Length length, CutGrain grain, PieceBook book)
    {
        var (width, height) = grain == CutGrain.Lengthwise ? (binding.StripWidth, length) : (length, binding.StripWidth);
        var piece = book.Piece(
            binding.Role,
            width,
            height,
            grain,
            Message.Of(grain == CutGrain.Lengthwise ? "use.binding-lengthwise" : "use.binding"),
            Message.Of(
                "why.binding",
                ("perimeter", perimeter),
                ("allowance", binding.Allowance),
                ("strips", strips),
                ("strip", length),
                ("joins", strips - 1),
                ("width", binding.StripWidth)
            )
        );
        return new(perimeter, binding.Allowance, binding.StripWidth, strips, piece.Id) { Grain = grain };
    }

    /// <summary>The least n with n strips, less (n − 1) joins of one strip width each, at least as long as wanted.</summary>
    public static int Count(Length wanted, Length width, Length stripLength) =>
        Math.Max(1, (int)((wanted - width) / (stripLength - width)).Ceiling());
}
