using System.Numerics;
using Kitwright.Checking.Exact;
using Kitwright.Measure;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// A bound from any duals at all: no strip of height H is worth more than V(H), so strips that together are worth the
/// demand cannot be lower than its worth divided by the greatest worth per height (A. A. Farley, "A note on bounding a
/// class of linear programming problems", Operations Research 38(5), 1990).
/// </summary>
internal static class FarleyBound
{
    /// <summary>Steps of the knapsack's inner loop; a fraction of a second.</summary>
    private const long MostSteps = 400_000_000;

    /// <summary>The same over all cases of a bound: a few seconds.</summary>
    private const long MostStepsOfCases = 2_000_000_000;

    /// <exception cref="BeyondLimits">The knapsack would be too large.</exception>
    public static BigInteger Of(Grid grid, long scale)
    {
        var rho = Rational.One;
        foreach (var (height, value) in BestByHeight(grid))
        {
            rho = Rational.Max(rho, new(value, (BigInteger)height * scale));
        }

        return (new Rational(grid.Worth, scale) / rho).Ceiling();
    }

    /// <summary>The bounded knapsack, ways entering from the lowest to the highest, read off after each height.</summary>
    /// <param name="cases">How often one as large is solved in all.</param>
    /// <exception cref="BeyondLimits">The knapsack, or all of them together, would be too large.</exception>
    public static IEnumerable<(long Height, long Value)> BestByHeight(Grid grid, int cases = 1)
    {
        var common = grid.Ways.Aggregate(0L, (g, way) => (long)BigInteger.GreatestCommonDivisor(g, way.Width));
        if (common == 0)
        {
            yield break;
        }

        var width = grid.Width / common;
        Guard(grid, width, cases);
        var best = new long[width + 1];
        for (var i = 0; i < grid.Ways.Length; i++)
        {
            Enter(best, grid.Ways[i], common, grid.Width);
            if (i + 1 == grid.Ways.Length || grid.Ways[i + 1].Height > grid.Ways[i].Height)
            {
                yield return (grid.Ways[i].Height, best[width]);
            }
        }
    }

    /// <summary>One way up to its count, in bundles of 1, 2, 4 … and the rest.</summary>
    private static void Enter(long[] best, Way way, long common, long room)
    {
        var left = Math.Min(way.Count, room / way.Width);
        for (long bundle = 1; left > 0; bundle = Math.Min(bundle * 2, left))
        {
            bundle = Math.Min(bundle, left);
            left -= bundle;
            long width = bundle * way.Width / common,
                dual = bundle * way.Dual;
            for (var at = best.LongLength - 1; at >= width; at--)
            {
                var with = best[at - width] + dual;
                if (with > best[at])
                {
                    best[at] = with;
                }
            }
        }
    }

    private static void Guard(Grid grid, long width, int cases)
    {
        BigInteger steps = 0,
            worth = 0;
        foreach (var way in grid.Ways)
        {
            var most = Math.Min(way.Count, grid.Width / way.Width);
            steps += (BigInteger)(BigInteger.Log2(most) + 1) * width;
            worth += (BigInteger)most * way.Dual;
        }

        if (steps > MostSteps || steps * cases > MostStepsOfCases || worth > long.MaxValue)
        {
            throw new BeyondLimits();
        }
    }
}
