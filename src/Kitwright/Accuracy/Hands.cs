namespace Kitwright.Accuracy;

/// <summary>
/// How exactly one person cuts, sews and presses, in inches: a bias that all her work shares, and a spread (standard
/// deviation) that is new each time.
/// </summary>
/// <param name="CutBias">Pieces come out larger by this.</param>
/// <param name="CutSpread">Of one cut side.</param>
/// <param name="SeamBias">Seams are wider than the allowance by this; negative for scant.</param>
/// <param name="SeamSpread">Of one seam's width.</param>
/// <param name="Fold">Cloth that the fold of a pressed seam takes up.</param>
/// <param name="FoldSpread">Of one fold.</param>
/// <param name="TrimSpread">Of a side that is squared up to a ruler line.</param>
/// <remarks>
/// A thread or two are about 1/64 in ([HIGH], [QCON] name a scant quarter inch so; the figure is own arithmetic from the
/// thickness of thread). The other usual values are common practice, no source; one's own come from the seam test.
/// </remarks>
public sealed record Hands(
    double CutBias,
    double CutSpread,
    double SeamBias,
    double SeamSpread,
    double Fold,
    double FoldSpread,
    double TrimSpread
)
{
    private const double Sixty4th = 1.0 / 64;

    /// <summary>A scant quarter inch that makes up for the fold, and ordinary care.</summary>
    public static Hands Usual { get; } = new(0, Sixty4th, -Sixty4th / 2, Sixty4th, Sixty4th, Sixty4th / 2, Sixty4th);

    /// <summary>The needle exactly a quarter inch from the edge: the fold is lost at every seam.</summary>
    public Hands WithTrueSeam() => this with { SeamBias = 0 };

    /// <summary>The seam that gives back what the fold takes.</summary>
    public Hands WithScantSeam() => this with { SeamBias = -Fold / 2 };

    /// <summary>What one seam takes beyond its two allowances.</summary>
    public double Take => (2 * SeamBias) + Fold;

    /// <summary>Variance of what one seam takes: twice the same seam, and the fold.</summary>
    public double TakeVariance => (4 * SeamSpread * SeamSpread) + (FoldSpread * FoldSpread);

    public double CutVariance => CutSpread * CutSpread;
}
