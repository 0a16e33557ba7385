using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>Cut sizes from finished sizes for one seam allowance, with exact roots and one rounding, upward.</summary>
/// <remarks>
/// A leg of a half-square triangle takes (2 + √2) seams: 0.8536 in at a quarter inch, which the trade prints as 7/8
/// ([KC], [GMG]; exact value by own arithmetic).
/// </remarks>
internal readonly record struct Seams(Length Allowance, Length RulerStep)
{
    public Length Both => Allowance * 2;

    /// <summary>Finished plus a seam on both sides; only an irrational size goes up to the ruler's step.</summary>
    public Length Rectangle(Surd finished)
    {
        var exact = finished + (Surd)Both;
        return exact.IsRational ? Length.Inches(exact.One) : exact.RoundUpTo(RulerStep);
    }

    /// <summary>Finished plus a seam on both sides, up to the ruler's step.</summary>
    public Length OnRuler(Surd finished) => (finished + (Surd)Both).RoundUpTo(RulerStep);

    /// <summary>A finished size as the arithmetic prints it: itself, or its round-up where it is irrational.</summary>
    public Length Known(Surd finished) => finished.IsRational ? Length.Inches(finished.One) : finished.RoundUpTo(RulerStep);

    /// <summary>The square that, cut once on the diagonal, gives two triangles with this finished leg.</summary>
    public Length HalfSquare(Surd leg) => (leg + ((2 + Surd.OfRoot2(1)) * Allowance)).RoundUpTo(RulerStep);

    /// <summary>The square that, cut twice, gives four triangles with this finished long side.</summary>
    public Length QuarterSquare(Surd longSide) =>
        (longSide + ((2 + Surd.OfRoot2(2)) * Allowance)).RoundUpTo(RulerStep);

    /// <summary>
    /// What a square that is trimmed later is cut over its exact size: 1/8 in, or the ruler's step where that is more. So
    /// 7/8 becomes 1 in ([LHQ1], [MQF2]) and, taken twice, 1 1/4 becomes 1 1/2 in ([F406], [NHQ], [SUZN]).
    /// </summary>
    public Length Generous => Length.Max(RulerStep, Length.Inches(0, 1, 8).RoundUpTo(RulerStep));

    /// <summary>The piece class of a rectangle with these finished sides, with its arithmetic.</summary>
    public PieceBook.Entry RectanglePiece(PieceBook book, string role, Surd width, Surd height, Message use)
    {
        Length w = Rectangle(width),
            h = Rectangle(height);
        var why =
            w == h
                ? Message.Of("why.square", ("finished", w - Both), ("seams", Both), ("cut", w))
                : Message.Of(
                    "why.rectangle",
                    ("width", Length.Max(w, h) - Both),
                    ("height", Length.Min(w, h) - Both),
                    ("seams", Both),
                    ("cutWidth", Length.Max(w, h)),
                    ("cutHeight", Length.Min(w, h))
                );
        return book.Piece(role, w, h, mayTurn: true, use, why);
    }
}
