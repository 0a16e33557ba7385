using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>
/// Continuous bias binding: a square is cut on its diagonal, its halves are sewn to a slanting band, the band to a tube,
/// one strip out of step, and the tube is cut round and round into one strip.
/// </summary>
/// <remarks>
/// The band's seam and the tube's seam take two allowances each, so of a side S there remain S − 2a each way. Between
/// the slanting edges, (S − 2a) / √2 apart, lie whole strips only, and each is (S − 2a)·√2 long (own arithmetic). The
/// published square root of length times width ([MDZ], [QB-MB]) counts neither seams nor whole strips.
/// </remarks>
internal static class BiasSquare
{
    /// <summary>Of more squares than this no quilt is bound.</summary>
    private const int MostSquares = 1000;

    public static BindingPlan Of(Quilt quilt, Length perimeter, ClothTerms terms, PieceBook book)
    {
        var binding = quilt.Binding;
        var (squares, side) = Least(perimeter + binding.Allowance, binding.StripWidth, quilt.Seam, quilt.RulerStep, terms.StripLength);
        var rounds = Rounds(side, binding.StripWidth, quilt.Seam);
        var piece = book.Piece(
            binding.Role,
            side,
            side,
            CutGrain.Bias,
            Message.Of("use.binding-bias"),
            Message.Of(
                "why.binding-bias",
                ("perimeter", perimeter),
                ("allowance", binding.Allowance),
                ("squares", squares),
                ("side", side),
                ("seams", quilt.Seam * 2),
                ("rounds", rounds),
                ("length", quilt.RulerStep * (Long(side, binding.StripWidth, quilt.Seam) / (Surd)quilt.RulerStep).Floor())
            )
        );
        return new(perimeter, binding.Allowance, binding.StripWidth, squares, piece.Id) { Grain = CutGrain.Bias, Rounds = rounds };
    }

    /// <summary>The fewest squares, and then the least side on the ruler, from which the strip comes out long enough.</summary>
    public static (int Squares, Length Side) Least(Length wanted, Length width, Length seam, Length step, Length widest)
    {
        // A strip takes more room than a narrow cloth has, or the demand is no quilt's: the cloth's own finding says so.
        var squares = 1;
        while (squares < MostSquares && !Reaches(squares, widest.RoundDownTo(step)))
        {
            squares++;
        }

        long low = 0,
            high = (long)(widest / step).Floor();
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = Reaches(squares, step * middle) ? (low, middle) : (middle, high);
        }

        return (squares, step * high);

        bool Reaches(int count, Length side) =>
            (Long(side, width, seam) * count) - (Surd)(width * (count - 1L)) >= (Surd)wanted;
    }

    /// <summary>The strip's length from one square.</summary>
    public static Surd Long(Length side, Length width, Length seam) =>
        Surd.OfRoot2(1) * (side - (seam * 2)) * Rounds(side, width, seam);

    /// <summary>Whole strips between the slanting edges.</summary>
    public static int Rounds(Length side, Length width, Length seam)
    {
        var rest = side - (seam * 2);
        if (rest.Sign <= 0)
        {
            return 0;
        }

        // n ≤ rest / (w·√2), so n² ≤ rest² / 2w²: no root is needed.
        var square = rest / width * (rest / width) / 2;
        var rounds = 0;
        while ((Rational)(rounds + 1) * (rounds + 1) <= square)
        {
            rounds++;
        }

        return rounds;
    }
}
