using System.Numerics;
using Kitwright.Checking.Exact;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// The least sum of given heights, each as often as one likes, that is not below a bound: by the least sum in each
/// residue class of the lowest height (S. Böcker, Zs. Lipták, "A fast and simple algorithm for the money changing
/// problem", Algorithmica 48, 2007, from memory).
/// </summary>
internal static class NextSum
{
    private const int MostClasses = 4_000_000;

    /// <exception cref="BeyondLimits">There would be too many residue classes.</exception>
    public static BigInteger Of(long[] heights, BigInteger bound)
    {
        if (heights.Length == 0)
        {
            return bound;
        }

        var common = heights.Aggregate(0L, (g, h) => (long)BigInteger.GreatestCommonDivisor(g, h));
        long[] scaled = [.. heights.Select(h => h / common)];
        var wanted = BigInteger.Max(bound, 0);
        wanted = (wanted + common - 1) / common;
        BigInteger? best = null;
        foreach (var least in LeastByClass(scaled))
        {
            if (least is not { } sum)
            {
                continue;
            }

            BigInteger reached = sum >= wanted ? sum : sum + ((wanted - sum + scaled[0] - 1) / scaled[0] * scaled[0]);
            best = best is { } b && b <= reached ? b : reached;
        }

        return best!.Value * common;
    }

    /// <param name="heights">The lowest first.</param>
    private static long?[] LeastByClass(long[] heights)
    {
        var classes = heights[0];
        if (classes > MostClasses)
        {
            throw new BeyondLimits();
        }

        var least = new long?[classes];
        least[0] = 0;
        foreach (var height in heights.Skip(1))
        {
            // Adding one height runs through the classes in gcd(height, classes) circles; twice round each settles it.
            var circles = (long)BigInteger.GreatestCommonDivisor(height, classes);
            for (long start = 0; start < circles; start++)
            {
                var at = start;
                for (var step = 0L; step < 2 * (classes / circles); step++)
                {
                    var next = (at + height) % classes;
                    if (least[at] is { } sum && (least[next] is not { } known || sum + height < known))
                    {
                        least[next] = sum + height;
                    }

                    at = next;
                }
            }
        }

        return least;
    }
}
