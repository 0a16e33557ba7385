using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Measure;

namespace Kitwright.Cutting;

/// <summary>
/// Fewest panels that hold strips of given heights: best fit decreasing, and where that misses the simple bound a search
/// that places strips from high to low, each in a panel of every different room or in a new one.
/// </summary>
/// <remarks>
/// Bin packing; S. Martello and P. Toth, "Knapsack Problems" (Wiley, 1990), chapter 8, name the search and the bound (sum of
/// heights over the panel, rounded up, after what is left free for good). It ends after a number of nodes, with the best so far.
/// </remarks>
public static class PanelPacking
{
    private const int MostNodes = 100_000;

    /// <summary>More strips than this are packed by best fit alone.</summary>
    private const int MostSearched = 500;

    /// <param name="heights">Each above zero and no higher than a panel.</param>
    /// <returns>For each panel the heights in it, as indices.</returns>
    public static ImmutableArray<ImmutableArray<int>> Of(ImmutableArray<Length> heights, Length panel)
    {
        // In whole units, so that comparing costs nothing.
        var unit = heights.Append(panel).Aggregate(BigInteger.One, (all, length) => all * length.InInches.Denominator / BigInteger.GreatestCommonDivisor(all, length.InInches.Denominator));
        long InUnits(Length length) => (long)(length.InInches * new Rational(unit, 1)).Numerator;
        int[] order = [.. Enumerable.Range(0, heights.Length).OrderByDescending(i => heights[i]).ThenBy(i => i)];
        var search = new Search([.. order.Select(i => InUnits(heights[i]))], InUnits(panel));
        return [.. search.Best.Select((bin, i) => (bin, i)).GroupBy(x => x.bin, x => order[x.i]).OrderBy(bin => bin.Key).Select(bin => bin.ToImmutableArray())];
    }

    private sealed class Search
    {
        private readonly long[] heights;
        private readonly long panel;
        private readonly long[] rest;
        private readonly int[] bins;
        private int most;
        private int nodes;

        public Search(long[] heights, long panel)
        {
            (this.heights, this.panel) = (heights, panel);
            rest = new long[heights.Length + 1];
            for (var i = heights.Length - 1; i >= 0; i--)
            {
                rest[i] = rest[i + 1] + heights[i];
            }

            bins = new int[heights.Length];
            Best = BestFit();
            most = Count(Best);
            if (most > Whole(rest[0]) && heights.Length <= MostSearched)
            {
                Place(0, []);
            }
        }

        /// <summary>The panel of each strip.</summary>
        public int[] Best { get; private set; }

        private static int Count(int[] bins) => bins.Length == 0 ? 0 : bins.Max() + 1;

        private int Whole(long sum) => (int)((sum + panel - 1) / panel);

        private int[] BestFit()
        {
            var room = new List<long>();
            var placed = new int[heights.Length];
            for (var i = 0; i < heights.Length; i++)
            {
                var best = -1;
                for (var bin = 0; bin < room.Count; bin++)
                {
                    if (room[bin] >= heights[i] && (best < 0 || room[bin] < room[best]))
                    {
                        best = bin;
                    }
                }

                if (best < 0)
                {
                    best = room.Count;
                    room.Add(panel);
                }

                room[best] -= heights[i];
                placed[i] = best;
            }

            return placed;
        }

        private void Place(int at, List<long> room)
        {
            if (room.Count >= most || ++nodes > MostNodes)
            {
                return;
            }

            if (at == heights.Length)
            {
                most = room.Count;
                Best = [.. bins];
                return;
            }

            // What does not fit the free room any more needs panels of its own.
            var free = room.Where(r => r >= heights[^1]).Sum();
            if (rest[at] > free && room.Count + Whole(rest[at] - free) >= most)
            {
                return;
            }

            var tried = new HashSet<long>();
            for (var bin = 0; bin < room.Count; bin++)
            {
                if (room[bin] >= heights[at] && tried.Add(room[bin]))
                {
                    bins[at] = bin;
                    room[bin] -= heights[at];
                    Place(at + 1, room);
                    room[bin] += heights[at];
                }
            }

            bins[at] = room.Count;
            room.Add(panel - heights[at]);
            Place(at + 1, room);
            room.RemoveAt(room.Count - 1);
        }
    }
}
