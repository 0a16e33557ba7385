using System.Numerics;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Checking.Exact;

/// <summary>Square roots of squared lengths: exact where they lie in the field of coordinates.</summary>
internal static class Roots
{
    /// <summary>
    /// The root where it is r, r√2, r√3 or r√6 with rational r, as for all seams at 45 and 60 degrees; otherwise a
    /// rational below the root by less than one part in 10^11, which a seam allowance can spare.
    /// </summary>
    public static Surd AtMost(Surd square)
    {
        if (square.IsRational)
        {
            if (TryRational(square.One, out var one))
            {
                return one;
            }

            if (TryRational(square.One / 2, out var two))
            {
                return Surd.OfRoot2(two);
            }

            if (TryRational(square.One / 3, out var three))
            {
                return Surd.OfRoot3(three);
            }

            if (TryRational(square.One / 6, out var six))
            {
                return new(default, default, default, six);
            }
        }

        return Below(square);
    }

    /// <summary>The length of a step: exact along an axis, whatever root it holds, else as <see cref="AtMost"/> says.</summary>
    public static Surd Length(Point step) =>
        step.Y.IsZero ? Magnitude(step.X)
        : step.X.IsZero ? Magnitude(step.Y)
        : AtMost((step.X * step.X) + (step.Y * step.Y));

    private static Surd Magnitude(Surd x) => x.Sign < 0 ? -x : x;

    private static bool TryRational(Rational square, out Rational root)
    {
        var (p, q) = (Whole(square.Numerator), Whole(square.Denominator));
        root = new(p, q);
        return p * p == square.Numerator && q * q == square.Denominator;
    }

    private static Surd Below(Surd square)
    {
        var near = Math.Sqrt(square.ToDouble()) * (1 - 1e-12);
        // The double as an exact fraction, with 60 bits before the binary point.
        var shift = 60 - Math.ILogB(near);
        var whole = new BigInteger(Math.ScaleB(near, shift));
        var root = shift >= 0 ? new Rational(whole, BigInteger.One << shift) : whole << -shift;
        return (Surd)(root * root) <= square ? root : throw new BeyondLimits();
    }

    /// <summary>The greatest whole number whose square is not above n (Newton's iteration from above).</summary>
    private static BigInteger Whole(BigInteger n)
    {
        if (n.IsZero)
        {
            return 0;
        }

        var root = BigInteger.One << (int)((n.GetBitLength() + 1) / 2);
        while (true)
        {
            var next = (root + (n / root)) >> 1;
            if (next >= root)
            {
                return root;
            }

            root = next;
        }
    }
}
