using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The fewest ruler settings with which a length is kept: sets of heights from the smallest on, each held against the
/// bound of the pieces that may lie only so; most sets fall by that alone.
/// </summary>
/// <param name="longest">The sum of heights, in units, that may be used.</param>
/// <param name="highest">No strip may be higher.</param>
/// <param name="accepts">Whether strips of the whole grid will do.</param>
internal sealed class FewestSettings(
    StripGrid grid,
    long longest,
    int highest,
    Func<ImmutableArray<CutStrips>, bool> accepts,
    WorkMeter meter
)
{
    private const int MostSets = 500;
    private const long StepsPerSet = 20_000_000;

    /// <summary>Whether of all sets of the fewest settings the shortest strips are wanted, not the first that will do.</summary>
    public bool Shortest { get; init; }

    /// <summary>Strips with fewer settings, or null where none were found within the work.</summary>
    /// <param name="settings">Those of a plan that is to be bettered.</param>
    public ImmutableArray<CutStrips>? Find(IReadOnlySet<int> settings)
    {
        int[] heights = [.. grid.Heights.Where(h => h <= highest)];
        int[] forced = [.. grid.WaysOf.Select(ways => ways.Select(way => grid.Ways[way].Height).Where(h => h <= highest).Distinct().ToArray()).Where(h => h.Length == 1).Select(h => h[0]).Distinct()];
        int[] free = [.. heights.Except(forced)];
        var left = MostSets;
        for (var size = Math.Max(1, forced.Length); size < settings.Count; size++)
        {
            if (Choices(free.Length, size - forced.Length) > left)
            {
                return OneLess(settings);
            }

            ImmutableArray<CutStrips>? best = null;
            foreach (var chosen in Sets(free, 0, size - forced.Length))
            {
                left--;
                if (meter.MustStop)
                {
                    return best;
                }

                if (Within([.. forced, .. chosen]) is { } strips && (best is not { } shorter || CutStrips.TotalHeight(strips) < CutStrips.TotalHeight(shorter)))
                {
                    best = strips;
                    if (!Shortest)
                    {
                        return best;
                    }
                }
            }

            if (best is not null)
            {
                return best;
            }
        }

        return null;
    }

    /// <summary>Where there are too many sets to try them all: those that lack one setting, time and again.</summary>
    private ImmutableArray<CutStrips>? OneLess(IReadOnlySet<int> settings)
    {
        ImmutableArray<CutStrips>? best = null;
        var present = settings.ToHashSet();
        foreach (var height in settings.Order())
        {
            if (meter.MustStop)
            {
                break;
            }

            if (Within([.. present.Where(h => h != height)]) is { } strips)
            {
                best = strips;
                present.Remove(height);
            }
        }

        return best;
    }

    private ImmutableArray<CutStrips>? Within(HashSet<int> settings)
    {
        if (GridOfHeights.Of(grid, settings) is not { } few)
        {
            return null;
        }

        using var share = meter.ShareOf(StepsPerSet);
        var search = new StripSearch(few.Grid, FirstFit.Strips(few.Grid), meter, length => Shortest ? length - 1 : length > longest ? longest : -1, (_, _) => { });
        search.Run();
        var strips = few.InWhole(search.Best);
        return search.Length <= longest && accepts(strips) ? strips : null;
    }

    private static long Choices(int of, int take)
    {
        var choices = 1L;
        for (var i = 1; i <= take && choices <= MostSets; i++)
        {
            choices = choices * (of - take + i) / i;
        }

        return take > of ? 0 : choices;
    }

    private static IEnumerable<ImmutableStack<int>> Sets(int[] heights, int from, int size)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = from; i <= heights.Length - size; i++)
        {
            foreach (var rest in Sets(heights, i + 1, size - 1))
            {
                yield return rest.Push(heights[i]);
            }
        }
    }
}
