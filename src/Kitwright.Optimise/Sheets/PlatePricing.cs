using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>The most valuable way of cutting one plate: strips of the best values, stacked up to its height.</summary>
internal sealed class PlatePricing(Plate plate, bool open, StripTable strips, WorkMeter meter)
{
    /// <summary>Strips of open length that are looked at in one round.</summary>
    private const int MostStrips = 8;

    private readonly long[] best = new long[plate.Up + 1];
    private readonly int[] last = new int[plate.Up + 1];

    public Plate Plate => plate;

    /// <summary>Table cells of one solve.</summary>
    public long Cells => strips.Cells;

    /// <summary>No pattern of a sheet is worth more; never more than all pieces together.</summary>
    public long Worth(ReadOnlySpan<long> values, ReadOnlySpan<int> counts)
    {
        var inLayer = CountsInLayer(counts);
        strips.Solve(values, inLayer, plate.Up);
        var all = 0L;
        foreach (var piece in plate.Ways.Select(way => way.Piece).Distinct())
        {
            all += values[piece] * inLayer[piece];
        }

        return open ? all : Math.Min(StackUp(plate.Up), all);
    }

    /// <summary>After <see cref="Worth"/>: the pattern of that worth; strips of open length one by one, the densest first.</summary>
    public IEnumerable<SheetPattern> Patterns() =>
        open
            ? Enumerable
                .Range(0, strips.Heights.Length)
                .Where(h => strips.Values[h] > 0)
                .OrderByDescending(h => (double)strips.Values[h] / strips.Heights[h])
                .Take(MostStrips)
                .Select(h => Pattern([strips.Cut(h)]))
            : [Pattern([.. Chosen(plate.Up).Select(h => strips.Cut(h.At) with { Times = h.Times })])];

    /// <summary>
    /// The largest ratio of value to height over all strips of open length, as a fraction, and 0 / 1 where nothing
    /// has a value.
    /// </summary>
    public (long Value, int Height) Densest()
    {
        var (value, height) = (0L, 1);
        for (var h = 0; h < strips.Heights.Length; h++)
        {
            if ((Int128)strips.Values[h] * plate.Layers * height > (Int128)value * strips.Heights[h])
            {
                (value, height) = (strips.Values[h] * plate.Layers, strips.Heights[h]);
            }
        }

        return (value, height);
    }

    /// <summary>
    /// A good pattern that holds no piece more often than it is wanted: the densest strip of the best pattern is cut,
    /// and what is left of plate and demand is looked at again. Null where nothing fits.
    /// </summary>
    /// <param name="chance">Where given, any strip of the best pattern is cut, and as often as chance will.</param>
    public SheetPattern? Construct(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, Random? chance = null)
    {
        var left = CountsInLayer(counts);
        var room = plate.Up;
        var chosen = ImmutableArray.CreateBuilder<PatternStrip>();
        while (room > 0 && !meter.MustStop)
        {
            strips.Solve(values, left, room);
            var at = open ? DensestHeight(chance) : OneOf(room, chance);
            if (at < 0)
            {
                break;
            }

            var strip = Proper(strips.Cut(at), left);
            var times = open ? 1 : Math.Min(room / strip.Height, TimesOf(strip, left));
            times = chance is null ? times : chance.Next(1, times + 1);
            Take(strip, times, left);
            chosen.Add(strip with { Times = times });
            room -= strip.Height * times;
            if (open)
            {
                break;
            }
        }

        return chosen.Count == 0 ? null : Pattern(chosen.ToImmutable());
    }

    private SheetPattern Pattern(ImmutableArray<PatternStrip> chosen) => new(plate.Sheet, plate.Along, plate.Layers, chosen);

    /// <summary>A folded strip yields every piece in each layer.</summary>
    private int[] CountsInLayer(ReadOnlySpan<int> counts)
    {
        var inLayer = counts.ToArray();
        for (var i = 0; plate.Layers > 1 && i < inLayer.Length; i++)
        {
            inLayer[i] = (inLayer[i] + plate.Layers - 1) / plate.Layers;
        }

        return inLayer;
    }

    private long StackUp(int room)
    {
        best[0] = 0;
        for (var y = 1; y <= room; y++)
        {
            (best[y], last[y]) = (best[y - 1], -1);
            for (var h = 0; h < strips.Heights.Length && strips.Heights[h] <= y; h++)
            {
                var value = best[y - strips.Heights[h]] + strips.Values[h];
                if (value > best[y])
                {
                    (best[y], last[y]) = (value, h);
                }
            }
        }

        meter.Charge((long)room * strips.Heights.Length);
        return best[room];
    }

    private IEnumerable<(int At, int Times)> Chosen(int room)
    {
        var times = new SortedDictionary<int, int>();
        while (room > 0)
        {
            var h = last[room];
            if (h < 0)
            {
                room--;
                continue;
            }

            times[h] = times.GetValueOrDefault(h) + 1;
            room -= strips.Heights[h];
        }

        return times.Select(pair => (pair.Key, pair.Value));
    }

    private int OneOf(int room, Random? chance)
    {
        StackUp(room);
        var densest = -1;
        var chosen = Chosen(room).ToList();
        if (chance is not null)
        {
            return chosen.Count == 0 ? -1 : chosen[chance.Next(chosen.Count)].At;
        }

        foreach (var (at, _) in chosen)
        {
            if (densest < 0 || (Int128)strips.Values[at] * strips.Heights[densest] >= (Int128)strips.Values[densest] * strips.Heights[at])
            {
                densest = at;
            }
        }

        return densest;
    }

    private int DensestHeight(Random? chance)
    {
        var densest = -1;
        if (chance is not null)
        {
            var good = Enumerable
                .Range(0, strips.Heights.Length)
                .Where(h => strips.Values[h] > 0)
                .OrderByDescending(h => (double)strips.Values[h] / strips.Heights[h])
                .Take(MostStrips)
                .ToList();
            return good.Count == 0 ? -1 : good[chance.Next(good.Count)];
        }

        for (var at = 0; at < strips.Heights.Length; at++)
        {
            if (
                strips.Values[at] > 0
                && (densest < 0 || (Int128)strips.Values[at] * strips.Heights[densest] >= (Int128)strips.Values[densest] * strips.Heights[at])
            )
            {
                densest = at;
            }
        }

        return densest;
    }

    /// <summary>The strip without what is not wanted any more.</summary>
    private static PatternStrip Proper(PatternStrip strip, int[] counts)
    {
        var left = (int[])counts.Clone();
        var cuts = ImmutableArray.CreateBuilder<PatternSubCut>();
        foreach (var cut in strip.SubCuts)
        {
            var whole = cut.Stack.Min(cell => left[cell.Piece] / cut.Stack.Where(c => c.Piece == cell.Piece).Sum(c => c.Times));
            var times = Math.Min(cut.Times, whole);
            if (times > 0)
            {
                cuts.Add(cut with { Times = times });
                foreach (var cell in cut.Stack)
                {
                    left[cell.Piece] -= times * cell.Times;
                }
            }

            if (times < cut.Times)
            {
                // One more with what is left of its pieces.
                var stack = ImmutableArray.CreateBuilder<StackCell>();
                foreach (var cell in cut.Stack)
                {
                    var fewer = Math.Min(cell.Times, left[cell.Piece]);
                    left[cell.Piece] -= fewer;
                    if (fewer > 0)
                    {
                        stack.Add(cell with { Times = fewer });
                    }
                }

                if (stack.Count > 0)
                {
                    cuts.Add(cut with { Times = 1, Stack = stack.ToImmutable() });
                }
            }
        }

        return strip with { SubCuts = cuts.ToImmutable() };
    }

    private static int TimesOf(PatternStrip strip, int[] left)
    {
        var holds = new Dictionary<int, int>();
        foreach (var cut in strip.SubCuts)
        {
            foreach (var cell in cut.Stack)
            {
                holds[cell.Piece] = holds.GetValueOrDefault(cell.Piece) + (cut.Times * cell.Times);
            }
        }

        return holds.Min(pair => left[pair.Key] / pair.Value);
    }

    private static void Take(PatternStrip strip, int times, int[] left)
    {
        foreach (var cut in strip.SubCuts)
        {
            foreach (var cell in cut.Stack)
            {
                left[cell.Piece] -= times * cut.Times * cell.Times;
            }
        }
    }
}
