using System.Numerics;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Checking.Exact;

/// <summary>
/// Exact numbers may grow without end in a plan that was made to do harm; real plans stay far below these limits.
/// </summary>
internal static class Fineness
{
    /// <summary>Bits of a numerator or denominator that a plan may state.</summary>
    public const int StatedBits = 256;

    /// <summary>Bits that may come of stated numbers.</summary>
    public const int DerivedBits = 1024;

    /// <summary>Inches; longer than any bolt, and safe for doubles.</summary>
    public const int Longest = 1_000_000;

    public static bool IsStatable(Rational x) => Fits(x, StatedBits) && Rational.Abs(x) <= Longest;

    public static bool IsStatable(Surd x) =>
        IsStatable(x.One) && IsStatable(x.Root2) && IsStatable(x.Root3) && IsStatable(x.Root6);

    /// <exception cref="BeyondLimits">A coordinate has grown past what real work needs.</exception>
    public static void Check(Point p)
    {
        Check(p.X);
        Check(p.Y);
    }

    public static void Check(Motion m)
    {
        Check(m.XX);
        Check(m.XY);
        Check(m.DX);
        Check(m.DY);
    }

    private static void Check(Surd x)
    {
        if (!(Fits(x.One, DerivedBits) && Fits(x.Root2, DerivedBits) && Fits(x.Root3, DerivedBits) && Fits(x.Root6, DerivedBits)))
        {
            throw new BeyondLimits();
        }
    }

    private static bool Fits(Rational x, int bits) => Fits(x.Numerator, bits) && Fits(x.Denominator, bits);

    private static bool Fits(BigInteger x, int bits) => x.GetBitLength() <= bits;
}
