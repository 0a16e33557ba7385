using System.Collections.Immutable;
using Kitwright.Kits;

namespace Kitwright.Optimise.Allocation;

/// <summary>Turns cuts by length into cuts of kits: within a lot, lengths of one kind are dealt to the sets in turn.</summary>
internal static class LotDealing
{
    /// <param name="times">Cuts by bolt and kind of length.</param>
    /// <param name="fromLot">Kits served by kit, set and lot.</param>
    public static ImmutableArray<BoltUse> Uses(BoltTicks ticks, BoltModel model, long[][] times, long[][][] fromLot)
    {
        var open = new Dictionary<(int Lot, int Kind), LinkedList<UseCut>>();
        for (var k = 0; k < fromLot.Length; k++)
        {
            for (var s = 0; s < fromLot[k].Length; s++)
            {
                for (var c = 0; c < ticks.Cuts[k][s].Length; c++)
                {
                    for (var lot = 0; lot < fromLot[k][s].Length; lot++)
                    {
                        var key = (lot, model.KindOf(ticks.Cuts[k][s][c]));
                        var queue = open.TryGetValue(key, out var held) ? held : open[key] = new();
                        queue.AddLast(new UseCut(k, s, c, (int)fromLot[k][s][lot]));
                    }
                }
            }
        }

        var uses = ImmutableArray.CreateBuilder<BoltUse>();
        for (var b = 0; b < times.Length; b++)
        {
            var cuts = Enumerable.Range(0, times[b].Length)
                .SelectMany(kind => Take(open.GetValueOrDefault((model.LotOf(b), kind)), (int)times[b][kind]))
                .OrderBy(c => (c.Kit, c.Set, c.Cut))
                .ToImmutableArray();
            if (cuts.Length > 0)
            {
                uses.Add(new(b, cuts));
            }
        }

        return uses.ToImmutable();
    }

    private static List<UseCut> Take(LinkedList<UseCut>? queue, int count)
    {
        var taken = new List<UseCut>();
        while (count > 0)
        {
            var next = queue!.First!.Value;
            var times = Math.Min(next.Times, count);
            queue.RemoveFirst();
            if (times > 0)
            {
                taken.Add(next with { Times = times });
            }

            if (next.Times > times)
            {
                queue.AddFirst(next with { Times = next.Times - times });
            }

            count -= times;
        }

        return taken;
    }
}
