using System.Numerics;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>What the contract of a proof says, worked out by trying everything, for pieces so few that this can be done.</summary>
internal static class TryEverything
{
    /// <summary>The greatest sum of duals in a strip.</summary>
    /// <param name="pieces">Width, count and dual.</param>
    public static long Best(IReadOnlyList<(int Width, int Count, long Dual)> pieces, int room, int from = 0)
    {
        if (from == pieces.Count)
        {
            return 0;
        }

        var (width, count, dual) = pieces[from];
        long best = 0;
        for (var n = 0; n <= count && n * width <= room; n++)
        {
            best = Math.Max(best, (n * dual) + Best(pieces, room - (n * width), from + 1));
        }

        return best;
    }

    /// <summary>The least sum of heights that is not below the bound.</summary>
    public static BigInteger NextSum(int[] heights, BigInteger bound)
    {
        var reached = new SortedSet<int> { 0 };
        for (var sum = 0; ; sum++)
        {
            if (sum > 0 && heights.Any(h => reached.Contains(sum - h)))
            {
                reached.Add(sum);
            }

            if (reached.Contains(sum) && sum >= bound)
            {
                return sum;
            }
        }
    }
}
