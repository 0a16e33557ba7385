using System.Numerics;

namespace Kitwright.Settings;

/// <summary>
/// How many different settings a repeat has: the mean, over the group, of the arrangements that an element keeps.
/// </summary>
/// <remarks>
/// Burnside, "Theory of groups of finite order", 2nd ed. 1911, §118-119 (from memory). An element moves looks as well as
/// cells: round a cycle of k cells the look must come back to itself after k moves, so each cycle gives as many choices
/// as there are looks that the k-th power of the element keeps.
/// </remarks>
public static class BurnsideCount
{
    public static BigInteger Of(RepeatGroup group)
    {
        var kept = group.Elements.Aggregate(BigInteger.Zero, (sum, element) => sum + KeptBy(element));
        return kept / group.Elements.Length;
    }

    private static BigInteger KeptBy(RepeatElement element)
    {
        var kept = BigInteger.One;
        var seen = new bool[element.To.Length];
        for (var first = 0; first < seen.Length; first++)
        {
            var length = 0;
            for (var cell = first; !seen[cell]; cell = element.To[cell])
            {
                seen[cell] = true;
                length++;
            }

            kept *= length == 0 ? 1 : LooksKept(element, length);
        }

        return kept;
    }

    private static int LooksKept(RepeatElement element, int power) =>
        Enumerable
            .Range(0, element.Look.Length)
            .Count(look => Enumerable.Range(0, power).Aggregate(look, (now, _) => element.Look[now]) == look);
}
