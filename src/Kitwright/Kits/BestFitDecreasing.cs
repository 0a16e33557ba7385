using System.Collections.Immutable;

namespace Kitwright.Kits;

/// <summary>
/// Best fit decreasing (D. S. Johnson, "Near-optimal bin packing algorithms", thesis, MIT, 1973; from memory): kits
/// in the order of their longest cut; each cut from the opened bolt that it leaves shortest, else from a new one. The
/// cuts of a set go to the lot where they open the fewest bolts and leave the least.
/// </summary>
/// <remarks>
/// Made four times, and the best kept: a new bolt is the shortest that holds the cut (uses up ends) or the longest
/// (opens few); kits come longest first or shortest first (which leaves fewer cuts unmet where cloth is short). The
/// answer to every problem, and the hint from which a search starts.
/// </remarks>
public static class BestFitDecreasing
{
    /// <summary>Best fit as a solver: kits are filled in the proportion wanted, and then line by line.</summary>
    public static IBoltSolver Solver { get; } = new BestFitSolver();

    public static BoltAllocation Solve(BoltProblem problem, BoltAllocation? start = null, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        var ticks = new BoltTicks(problem);
        var made = Made(ticks).ToList();
        if (start is not null && AllocationFigures.Of(ticks, start.Uses) is { } figures)
        {
            made.Add((start.Uses, figures));
        }

        if (made.Count == 0)
        {
            // Promises that best fit does not keep, and no start that does: they are dropped.
            return Solve(problem with { Kits = [.. problem.Kits.Select(k => k with { Promised = 0 })] }, null, cancel);
        }

        var best = made.MinBy(m => m.Figures);
        return new(best.Uses, best.Figures, AllocationBounds.Goals(ticks, best.Figures), "best-fit-decreasing", 0, "done");
    }

    /// <summary>Whether best fit serves every kit that is wanted.</summary>
    public static bool Serves(BoltProblem problem) => Made(new(problem)).Any(m => m.Figures.Unmet == 0);

    private static IEnumerable<(ImmutableArray<BoltUse> Uses, AllocationFigures Figures)> Made(BoltTicks ticks)
    {
        var longestFirst = Enumerable.Range(0, ticks.Problem.Kits.Length)
            .OrderByDescending(kit => ticks.Cuts[kit].SelectMany(s => s).DefaultIfEmpty(0).Max())
            .ThenByDescending(kit => ticks.Cuts[kit].SelectMany(s => s).Sum())
            .ToImmutableArray();
        ImmutableArray<ImmutableArray<int>> orders = [longestFirst, [.. longestFirst.Reverse()]];
        foreach (var order in orders)
        {
            foreach (var longestBolt in new[] { false, true })
            {
                var uses = Uses(ticks, order, longestBolt);
                if (AllocationFigures.Of(ticks, uses) is { } figures)
                {
                    yield return (uses, figures);
                }
            }
        }
    }

    private static ImmutableArray<BoltUse> Uses(BoltTicks ticks, ImmutableArray<int> order, bool longestBolt)
    {
        var table = new Table(ticks, longestBolt);
        foreach (var kit in order)
        {
            table.Serve(kit, ticks.Problem.Kits[kit].Promised);
        }

        foreach (var kit in order)
        {
            table.Serve(kit, ticks.Problem.Kits[kit].Kits - ticks.Problem.Kits[kit].Promised);
        }

        return table.Uses();
    }

    private sealed class Table(BoltTicks ticks, bool longestBolt)
    {
        private readonly long[] room = [.. ticks.Room];
        private readonly bool[] opened = new bool[ticks.Room.Length];
        private readonly Dictionary<int, Dictionary<(int Kit, int Set, int Cut), int>> made = [];

        /// <summary>Kits up to a number, as long as they fit.</summary>
        public void Serve(int kit, int count)
        {
            for (var i = 0; i < count && TryKit(kit); i++) { }
        }

        private bool TryKit(int kit)
        {
            var taken = new List<(int Bolt, int Set, int Cut)>();
            for (var set = 0; set < ticks.Cuts[kit].Length; set++)
            {
                if (BestLot(kit, set) is not { } bolts)
                {
                    foreach (var (bolt, s, c) in taken)
                    {
                        room[bolt] += ticks.Cuts[kit][s][c];
                    }

                    return false;
                }

                for (var cut = 0; cut < bolts.Length; cut++)
                {
                    room[bolts[cut]] -= ticks.Cuts[kit][set][cut];
                    taken.Add((bolts[cut], set, cut));
                }
            }

            foreach (var (bolt, set, cut) in taken)
            {
                opened[bolt] = true;
                var counts = made.TryGetValue(bolt, out var held) ? held : made[bolt] = [];
                counts[(kit, set, cut)] = counts.GetValueOrDefault((kit, set, cut)) + 1;
            }

            return taken.Count > 0;
        }

        public ImmutableArray<BoltUse> Uses() =>
            [
                .. made.OrderBy(m => m.Key)
                    .Select(m => new BoltUse(
                        m.Key,
                        [.. m.Value.OrderBy(c => c.Key).Select(c => new UseCut(c.Key.Kit, c.Key.Set, c.Key.Cut, c.Value))]
                    )),
            ];

        /// <summary>The bolt of each cut of the set, all of one lot; null where no lot holds it.</summary>
        private int[]? BestLot(int kit, int set)
        {
            int[]? best = null;
            var bestScore = (Opens: int.MaxValue, Left: long.MaxValue);
            for (var lot = 0; lot < ticks.Lots; lot++)
            {
                if (InLot(kit, set, lot) is not { } bolts)
                {
                    continue;
                }

                var used = bolts.Distinct().ToArray();
                var left = used.Sum(b => room[b]);
                var score = (used.Count(b => !opened[b]), left);
                if (score.CompareTo(bestScore) < 0)
                {
                    (best, bestScore) = (bolts, score);
                }
            }

            return best;
        }

        private int[]? InLot(int kit, int set, int lot)
        {
            var cuts = ticks.Cuts[kit][set];
            var bolts = new int[cuts.Length];
            var spent = new Dictionary<int, long>();
            foreach (var cut in Enumerable.Range(0, cuts.Length).OrderByDescending(c => cuts[c]))
            {
                var bolt = BestFit(cuts[cut], lot, spent);
                if (bolt < 0)
                {
                    return null;
                }

                bolts[cut] = bolt;
                spent[bolt] = spent.GetValueOrDefault(bolt) + cuts[cut];
            }

            return bolts;
        }

        private int BestFit(long length, int lot, Dictionary<int, long> spent)
        {
            var best = -1;
            var bestScore = (Unopened: true, Left: long.MaxValue);
            for (var bolt = 0; bolt < room.Length; bolt++)
            {
                var left = ticks.Lot[bolt] == lot ? room[bolt] - spent.GetValueOrDefault(bolt) - length : -1;
                var unopened = !opened[bolt] && !spent.ContainsKey(bolt);
                var score = (unopened, unopened && longestBolt ? -left : left);
                if (left >= 0 && score.CompareTo(bestScore) < 0)
                {
                    (best, bestScore) = (bolt, score);
                }
            }

            return best;
        }
    }
}
