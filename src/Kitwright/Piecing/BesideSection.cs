using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>
/// Fills the width that lengthwise pieces leave beside them with strips of ordinary pieces: each time the strip that
/// covers most of its own area, as often as demand and length allow.
/// </summary>
internal static class BesideSection
{
    /// <summary>One way to lay a piece across the rest of the width.</summary>
    private readonly record struct Way(PathId Piece, Length Width, Length Height, bool Turned);

    /// <param name="left">How many of each piece are still wanted; what is laid here is taken off.</param>
    public static ImmutableArray<StripCut> Fill(
        ImmutableArray<ClothDemand> demand,
        Dictionary<PathId, int> left,
        PathId section,
        Length room,
        Length length
    )
    {
        Way[] ways = [.. demand.Where(d => !d.Lengthwise).SelectMany(Ways).Where(w => w.Width <= room)];
        var strips = ImmutableArray.CreateBuilder<StripCut>();
        while (Best(ways, left, room, length) is { } best)
        {
            var height = best[0].Way.Height;
            var times = best.Min(lot => left[lot.Way.Piece] / lot.Count);
            times = (int)BigInteger.Min(times, (length / height).Floor());
            foreach (var (way, count) in best)
            {
                left[way.Piece] -= count * times;
            }

            length -= height * times;
            var id = section.Child("strip", strips.Count + 1);
            strips.Add(
                new(
                    id,
                    height,
                    times,
                    [.. best.Select((lot, i) => new SubCut(id.Child("cut", i + 1), lot.Way.Width, lot.Count, [new(lot.Way.Piece, 1, lot.Way.Turned)]))]
                )
            );
        }

        return strips.ToImmutable();
    }

    private static IEnumerable<Way> Ways(ClothDemand d)
    {
        yield return new(d.Piece, d.Width, d.Height, Turned: false);
        if (d.MayTurn && d.Width != d.Height)
        {
            yield return new(d.Piece, d.Height, d.Width, Turned: true);
        }
    }

    /// <summary>For each height of a piece still wanted, that piece first and then what fits beside it; the fullest strip.</summary>
    private static List<(Way Way, int Count)>? Best(Way[] ways, Dictionary<PathId, int> left, Length room, Length length)
    {
        List<(Way Way, int Count)>? best = null;
        var most = Rational.Zero;
        foreach (var first in ways.Where(w => left[w.Piece] > 0 && w.Height <= length))
        {
            var strip = Strip(first, ways, left, room);
            var full = strip.Aggregate(Rational.Zero, (sum, lot) => sum + (lot.Way.Width.InInches * lot.Way.Height.InInches * lot.Count)) / first.Height.InInches;
            if (full > most)
            {
                (best, most) = (strip, full);
            }
        }

        return best;
    }

    private static List<(Way Way, int Count)> Strip(Way first, Way[] ways, Dictionary<PathId, int> left, Length room)
    {
        var strip = new List<(Way Way, int Count)>();
        var used = new HashSet<PathId>();
        foreach (var way in ways.Where(w => w.Height <= first.Height).OrderByDescending(w => w.Height).ThenByDescending(w => w.Width).Prepend(first))
        {
            var count = (int)BigInteger.Min(left[way.Piece], (room / way.Width).Floor());
            if (count > 0 && used.Add(way.Piece))
            {
                strip.Add((way, count));
                room -= way.Width * count;
            }
        }

        return strip;
    }
}
