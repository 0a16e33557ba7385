using System.Numerics;

namespace Kitwright.Measure;

/// <summary>The integer square root, by Newton's method from above.</summary>
public static class SquareRoot
{
    /// <summary>The greatest whole number whose square is not above <paramref name="square"/>, which is not negative.</summary>
    public static BigInteger Floor(BigInteger square)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(square);
        if (square.IsZero)
        {
            return 0;
        }

        // From any start at or above the root the steps fall until they reach it.
        var root = BigInteger.One << (int)((square.GetBitLength() + 1) / 2);
        while (true)
        {
            var next = (root + (square / root)) >> 1;
            if (next >= root)
            {
                return root;
            }

            root = next;
        }
    }
}
