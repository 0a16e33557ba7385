using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>Bounds on an allocation that need no search; exact where all cuts have one length.</summary>
public static class AllocationBounds
{
    /// <summary>At least this many cuts stay unmet.</summary>
    /// <remarks>
    /// Of cuts no shorter than the shortest, a bolt gives at most floor(room / shortest); and the cuts made, taken as
    /// the shortest that are wanted, must fit into all room laid end to end.
    /// </remarks>
    public static long Unmet(BoltTicks ticks)
    {
        var wanted = Wanted(ticks);
        if (wanted.Count == 0)
        {
            return 0;
        }

        var total = wanted.Sum(w => w.Count);
        var shortest = wanted[0].Length;
        var byCount = ticks.Room.Sum(r => r / shortest);
        return Math.Max(0, total - Math.Min(byCount, ByRoom(wanted, ticks.Room.Sum())));
    }

    /// <summary>No more kits than this come out of the bolts, where the problem has one colorway.</summary>
    /// <remarks>For every length of cut: bolts give so many of at least that length, and a kit wants so many.</remarks>
    public static long Kits(BoltTicks ticks)
    {
        long[] cuts = [.. ticks.Cuts[0].SelectMany(set => set)];
        var byRoom = ticks.Room.Sum() / cuts.Sum();
        return cuts.Select(length => ticks.Room.Sum(r => r / length) / cuts.Count(c => c >= length)).Append(byRoom).Min();
    }

    /// <summary>Bounds of every goal beside what an allocation came to.</summary>
    public static ImmutableArray<GoalBound> Goals(BoltTicks ticks, AllocationFigures figures)
    {
        var unmet = new GoalBound(AllocationGoal.Unmet, figures.Unmet, Unmet(ticks));
        if (ticks.Problem.Aim == AllocationAim.Count)
        {
            return [unmet];
        }

        var opened = Opened(ticks, figures.Unmet);
        var kept = ticks.Room.DefaultIfEmpty(0).Max();
        return
        [
            unmet,
            new(AllocationGoal.Waste, figures.Waste.InInches, Length.Ticks(ticks.Loss * opened).InInches),
            new(AllocationGoal.Opened, figures.Opened, opened),
            new(AllocationGoal.Kept, figures.Kept.InInches, figures.Opened == 0 ? 0 : Length.Ticks(kept).InInches),
        ];
    }

    /// <summary>At least so many bolts are opened when so many cuts stay unmet.</summary>
    /// <remarks>
    /// The longest bolts must hold the cuts that are made, taken as the shortest, laid end to end; and for every length,
    /// bolts give so many cuts of at least that length, of which no more than the unmet ones are missing.
    /// </remarks>
    public static long Opened(BoltTicks ticks, long unmet)
    {
        var wanted = Wanted(ticks);
        var atLeastAsLong = wanted.Sum(w => w.Count);
        var opened = Fewest(ticks, LeastLength(wanted, atLeastAsLong - unmet), room => room);
        foreach (var (length, count) in wanted)
        {
            opened = Math.Max(opened, Fewest(ticks, atLeastAsLong - unmet, room => room / length));
            atLeastAsLong -= count;
        }

        return opened;
    }

    private static long Fewest(BoltTicks ticks, long need, Func<long, long> gives)
    {
        var opened = 0L;
        foreach (var room in ticks.Room.OrderDescending())
        {
            if (need <= 0)
            {
                break;
            }

            need -= gives(room);
            opened++;
        }

        return opened;
    }

    private static long LeastLength(List<(long Length, long Count)> wanted, long cuts)
    {
        var length = 0L;
        foreach (var kind in wanted)
        {
            var made = Math.Clamp(cuts, 0, kind.Count);
            length += kind.Length * made;
            cuts -= made;
        }

        return length;
    }

    private static long ByRoom(List<(long Length, long Count)> wanted, long room)
    {
        var cuts = 0L;
        foreach (var (length, count) in wanted)
        {
            var fit = Math.Min(count, room / length);
            cuts += fit;
            room -= fit * length;
            if (fit < count)
            {
                break;
            }
        }

        return cuts;
    }

    /// <summary>Lengths wanted with their counts, shortest first.</summary>
    private static List<(long Length, long Count)> Wanted(BoltTicks ticks) =>
        [
            .. ticks.Cuts.SelectMany((sets, kit) => sets.SelectMany(set => set).Select(length => (length, ticks.Problem.Kits[kit].Kits)))
                .Where(w => w.Kits > 0)
                .GroupBy(w => w.length, w => (long)w.Kits)
                .Select(g => (g.Key, g.Sum()))
                .OrderBy(w => w.Key),
        ];
}
