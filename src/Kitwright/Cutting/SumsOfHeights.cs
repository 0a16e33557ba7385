namespace Kitwright.Cutting;

/// <summary>
/// Which lengths are sums of candidate heights: by the least sum in every class of remainders modulo the lowest height.
/// </summary>
/// <remarks>
/// S. Böcker and Zs. Lipták, "A fast and simple algorithm for the money changing problem", Algorithmica 48 (2007),
/// from memory. Time is the number of heights times the lowest height, whatever the length asked for.
/// </remarks>
public sealed class SumsOfHeights
{
    private readonly int modulus;
    private readonly long[] leastOfRemainder;

    public SumsOfHeights(IReadOnlyList<int> heights)
    {
        modulus = heights.Count == 0 ? 1 : heights[0];
        leastOfRemainder = new long[modulus];
        Array.Fill(leastOfRemainder, long.MaxValue);
        leastOfRemainder[0] = 0;
        foreach (var height in heights.Skip(1))
        {
            Admit(height);
        }
    }

    /// <summary>The least sum of heights that is not below <paramref name="length"/>.</summary>
    public long RoundUp(long length)
    {
        var least = long.MaxValue;
        for (var remainder = 0; remainder < modulus; remainder++)
        {
            var from = leastOfRemainder[remainder];
            if (from != long.MaxValue)
            {
                var steps = length > from ? (length - from + modulus - 1) / modulus : 0;
                least = Math.Min(least, from + (steps * modulus));
            }
        }

        return least;
    }

    private void Admit(int height)
    {
        var circles = (int)System.Numerics.BigInteger.GreatestCommonDivisor(height, modulus);
        for (var start = 0; start < circles; start++)
        {
            GoRound(start, circles, height);
        }
    }

    /// <summary>Adding the height over and over visits one circle of remainders; twice round settles every entry.</summary>
    private void GoRound(int start, int circles, int height)
    {
        var remainder = start;
        var reached = long.MaxValue;
        for (var step = 0; step < 2L * modulus / circles; step++)
        {
            reached = Math.Min(reached, leastOfRemainder[remainder]);
            leastOfRemainder[remainder] = reached;
            reached = reached == long.MaxValue ? reached : reached + height;
            remainder = (remainder + height) % modulus;
        }
    }
}
