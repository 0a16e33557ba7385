using Kitwright.Checking.Exact;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Checking.Sheets;

/// <summary>
/// The greatest worth of strips of every height that matters, by plain dynamic programs: what a strip may hold depends on
/// the stages left and on what the last cuts may leave.
/// </summary>
/// <param name="across">How long a strip is, in units.</param>
/// <param name="up">No strip is higher; of open length, than the highest way of laying a piece.</param>
internal sealed class StripWorth(SheetTerms terms, long across, List<LaidPiece> ways, long? up = null)
{
    private const long MostSteps = 4_000_000_000;

    private readonly long highest = up ?? ways.Select(way => way.Across).DefaultIfEmpty().Max();
    private readonly Dictionary<long, long[]> stacks = [];
    private long steps;

    public List<(long Height, long Value)> All() => [.. Heights().Select(height => (height, Math.Min(OfHeight(height), AllPieces(height))))];

    /// <summary>All pieces that may lie in a strip of a height: no strip is worth more.</summary>
    public long AllPieces(long height) =>
        ways.Where(way => way.Across <= height).DistinctBy(way => way.Piece).Sum(way => way.Count * way.Dual);

    /// <summary>
    /// Slices one unit high side by side: no strip, however high, is worth more for each unit of its height. A slice is worth
    /// what its piece is, over the piece's height, rounded up.
    /// </summary>
    public long OfSlices()
    {
        var best = new long[across + 1];
        foreach (var way in ways)
        {
            TakeStacks(best, way with { Dual = (way.Dual + way.Across - 1) / way.Across }, inStack: 1);
        }

        return best.Max();
    }

    /// <summary>Strips above one another, each as often as one likes.</summary>
    public static long StackedUp(List<(long Height, long Value)> strips, long up)
    {
        var best = new long[up + 1];
        for (var y = 1L; y <= up; y++)
        {
            best[y] = best[y - 1];
            foreach (var (height, value) in strips)
            {
                if (height <= y)
                {
                    best[y] = Math.Max(best[y], best[y - height] + value);
                }
            }
        }

        return best[up];
    }

    private IEnumerable<long> Heights()
    {
        if (terms.Stages == 2)
        {
            return ways.Select(way => way.Across).Distinct().Order();
        }

        if (terms.Last == LastCut.Homogeneous)
        {
            return ways.SelectMany(way => Enumerable.Range(1, (int)(highest / way.Across)).Select(n => n * way.Across)).Distinct().Order();
        }

        var sums = new SortedSet<long> { 0 };
        for (var y = 1L; y <= highest; y++)
        {
            if (ways.Any(way => sums.Contains(y - way.Across)))
            {
                sums.Add(y);
            }
        }

        return sums.Where(y => y > 0);
    }

    private long OfHeight(long height)
    {
        var best = new long[across + 1];
        if (terms.Stages == 3 && terms.Last != LastCut.Homogeneous)
        {
            foreach (var width in ways.Select(way => way.Along).Distinct())
            {
                var value = StacksOf(width)[height];
                Spend(across);
                for (var x = width; x <= across; x++)
                {
                    best[x] = Math.Max(best[x], best[x - width] + value);
                }
            }

            return best.Max();
        }

        foreach (var way in ways)
        {
            var inStack = terms.Stages == 3 ? height / way.Across : way.Across == height || (terms.Last == LastCut.NonExact && way.Across < height) ? 1 : 0;
            if (inStack == 0)
            {
                continue;
            }

            if (terms is { Stages: 2, Last: LastCut.Homogeneous })
            {
                best[across] = Math.Max(best[across], Math.Min(way.Count, across / way.Along) * way.Dual);
                continue;
            }

            TakeStacks(best, way, inStack);
        }

        return best.Max();
    }

    /// <summary>Stack after stack of one piece, until its count is reached; the last one may be lower.</summary>
    private void TakeStacks(long[] best, LaidPiece way, long inStack)
    {
        var left = Math.Min(way.Count, inStack * (across / way.Along));
        for (var these = Math.Min(inStack, left); these > 0; left -= these, these = Math.Min(inStack, left))
        {
            Spend(across);
            for (var x = across; x >= way.Along; x--)
            {
                best[x] = Math.Max(best[x], best[x - way.Along] + (these * way.Dual));
            }
        }
    }

    /// <summary>The greatest worth of a stack of a width within every height; the same for strips of all heights.</summary>
    private long[] StacksOf(long width)
    {
        if (stacks.TryGetValue(width, out var known))
        {
            return known;
        }

        var best = new long[highest + 1];
        foreach (var way in ways.Where(w => w.Along == width || (terms.Last == LastCut.NonExact && w.Along < width)))
        {
            for (var copies = Math.Min(way.Count, highest / way.Across); copies > 0; copies--)
            {
                Spend(highest);
                for (var y = highest; y >= way.Across; y--)
                {
                    best[y] = Math.Max(best[y], best[y - way.Across] + way.Dual);
                }
            }
        }

        return stacks[width] = best;
    }

    private void Spend(long cells)
    {
        steps += cells;
        if (steps > MostSteps)
        {
            throw new BeyondLimits();
        }
    }
}
