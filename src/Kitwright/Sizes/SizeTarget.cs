using Kitwright.Measure;

namespace Kitwright.Sizes;

/// <summary>The size that a customer wants.</summary>
/// <param name="Width">As she will measure it.</param>
/// <param name="DrawUp">
/// Share by which quilting and the first wash draw the top up; 0 where it is measured before. A 70 in quilt came to
/// 68 in, 2.9 % ([PGOODS]); lecturers say 3 % for blended and 5 % for cotton batting ([ROBYN]).
/// </param>
public sealed record SizeTarget(Length Width, Length Height, Rational DrawUp)
{
    public static Rational MostDrawUp => new(1, 10);

    /// <summary>What the finished top must measure before it is quilted.</summary>
    public (Length Width, Length Height) Top => (Width / (1 - DrawUp), Height / (1 - DrawUp));

    /// <summary>What a top of a size comes to.</summary>
    public (Length Width, Length Height) After(Length width, Length height) => (width * (1 - DrawUp), height * (1 - DrawUp));
}
