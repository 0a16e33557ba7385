using System.Collections.Immutable;
using Google.OrTools.Sat;
using Kitwright.Kits;

namespace Kitwright.Optimise.Allocation;

/// <summary>
/// The cutting stock of one fabric as a constraint model: how often each bolt gives each length, which bolts are
/// opened, and how many kits are served from which lot.
/// </summary>
/// <remarks>
/// Cuts of one length are one kind here; which kit they are for is dealt out afterwards. Where every set is a single
/// cut, lots do not matter and all bolts count as one lot. Equal bolts of one lot are ordered, since exchanging them
/// changes nothing.
/// </remarks>
internal sealed class BoltModel
{
    private readonly BoltTicks ticks;
    private readonly long unit;
    private readonly long[] lengths;
    private readonly int lots;
    private readonly int[] lotOf;
    private readonly List<BoolVar> keeps = [];
    private readonly List<IntVar> lost = [];
    private readonly List<BoolVar> longest = [];
    private IntVar? kept;
    private BoolVar? none;

    /// <param name="model">A model of its own, or one that several fabrics share.</param>
    public BoltModel(BoltTicks ticks, CpModel model)
    {
        this.ticks = ticks;
        Model = model;
        lengths = [.. ticks.Cuts.SelectMany(k => k).SelectMany(s => s).Distinct().Order()];
        unit = lengths.Concat(ticks.Room).Append(ticks.Loss).Append(ticks.Useful).Aggregate(Gcd);
        var alone = ticks.Cuts.All(sets => sets.All(set => set.Length == 1));
        lots = alone ? 1 : ticks.Lots;
        lotOf = [.. ticks.Lot.Select(lot => alone ? 0 : lot)];
        Served = [.. ticks.Problem.Kits.Select((k, i) => Model.NewIntVar(k.Promised, k.Kits, $"served{i}"))];
        Opened = [.. ticks.Room.Select((_, b) => Model.NewBoolVar($"opened{b}"))];
        Times = [.. ticks.Room.Select((room, b) => lengths.Select((length, c) => Model.NewIntVar(0, room / length, $"times{b}.{c}")).ToArray())];
        Rest = [.. ticks.Room.Select((room, b) => Model.NewIntVar(0, room / unit, $"rest{b}"))];
        FromLot = [.. ticks.Cuts.Select((sets, k) => sets.Select((_, s) => NewLotVars(k, s)).ToArray())];
        AddRoom();
        AddDemand();
        AddOrder();
    }

    public CpModel Model { get; }
    public IntVar[] Served { get; }
    public BoolVar[] Opened { get; }
    public IntVar[][] Times { get; }
    public IntVar[] Rest { get; }
    public IntVar[][][] FromLot { get; }

    /// <summary>Ticks to a unit of the model.</summary>
    public long Unit => unit;

    /// <summary>Met cuts, to be made most.</summary>
    public LinearExpr Met() => LinearExpr.WeightedSum(Served, ticks.Problem.Kits.Select(k => (long)k.CutsPerKit));

    /// <summary>Waste in units, to be made least: what loading takes, and rests below the useful length.</summary>
    public LinearExpr Waste()
    {
        for (var b = 0; b < Rest.Length; b++)
        {
            keeps.Add(Model.NewBoolVar($"keeps{b}"));
            lost.Add(Model.NewIntVar(0, Math.Max(0, (ticks.Useful / unit) - 1), $"lost{b}"));
            Model.Add(Rest[b] >= ticks.Useful / unit).OnlyEnforceIf(keeps[b]);
            Model.Add(lost[b] >= Rest[b]).OnlyEnforceIf(keeps[b].Not());
        }

        return LinearExpr.Sum(lost) + (LinearExpr.Sum(Opened) * (ticks.Loss / unit));
    }

    /// <summary>The longest kept rest in units, to be made most; 0 where nothing is kept.</summary>
    public LinearExpr Kept()
    {
        kept = Model.NewIntVar(0, ticks.Room.DefaultIfEmpty(0).Max() / unit, "kept");
        none = Model.NewBoolVar("none");
        Model.Add(kept == 0).OnlyEnforceIf(none);
        for (var b = 0; b < Rest.Length; b++)
        {
            longest.Add(Model.NewBoolVar($"longest{b}"));
            Model.AddImplication(longest[b], Opened[b]);
            Model.Add(kept <= Rest[b]).OnlyEnforceIf(longest[b]);
            Model.Add(Rest[b] >= ticks.Useful / unit).OnlyEnforceIf(longest[b]);
        }

        Model.AddExactlyOne([.. longest, none]);
        return kept;
    }

    /// <summary>Starts the next search from an allocation; hints given before are cleared by the caller.</summary>
    public void Hint(ImmutableArray<BoltUse> uses)
    {
        var times = Ordered(TimesOf(uses));
        long[] rest = [.. times.Select((t, b) => t.Sum() == 0 ? 0 : (ticks.Room[b] / unit) - Used(t))];
        for (var b = 0; b < times.Length; b++)
        {
            Model.AddHint(Opened[b], times[b].Sum() > 0);
            Model.AddHint(Rest[b], rest[b]);
            for (var c = 0; c < lengths.Length; c++)
            {
                Model.AddHint(Times[b][c], times[b][c]);
            }

            if (keeps.Count > 0)
            {
                Model.AddHint(keeps[b], rest[b] >= ticks.Useful / unit);
                Model.AddHint(lost[b], rest[b] >= ticks.Useful / unit ? 0 : rest[b]);
            }
        }

        HintLots(uses);
        if (kept is not null)
        {
            var best = Array.IndexOf(rest, rest.Max());
            var any = rest[best] >= ticks.Useful / unit && rest[best] > 0;
            Model.AddHint(kept, any ? rest[best] : 0);
            Model.AddHint(none!, !any);
            for (var b = 0; b < longest.Count; b++)
            {
                Model.AddHint(longest[b], any && b == best);
            }
        }
    }

    /// <summary>The index of a length among the kinds of cut.</summary>
    public int KindOf(long length) => Array.BinarySearch(lengths, length);

    /// <summary>The lot of a bolt as the model sees it.</summary>
    public int LotOf(int bolt) => lotOf[bolt];

    private IntVar[] NewLotVars(int kit, int set) =>
        [.. Enumerable.Range(0, lots).Select(lot => Model.NewIntVar(0, ticks.Problem.Kits[kit].Kits, $"lot{kit}.{set}.{lot}"))];

    private void AddRoom()
    {
        for (var b = 0; b < Times.Length; b++)
        {
            var used = LinearExpr.WeightedSum(Times[b], lengths.Select(length => length / unit));
            Model.Add(used + Rest[b] == (Opened[b] * (ticks.Room[b] / unit)));
            // A bolt is opened only to be cut.
            Model.Add(LinearExpr.Sum(Times[b]) >= Opened[b]);
        }
    }

    private void AddDemand()
    {
        var wanted = new LinearExpr[lots, lengths.Length];
        for (var k = 0; k < FromLot.Length; k++)
        {
            for (var s = 0; s < FromLot[k].Length; s++)
            {
                Model.Add(LinearExpr.Sum(FromLot[k][s]) == Served[k]);
                foreach (var kind in ticks.Cuts[k][s].GroupBy(KindOf))
                {
                    for (var lot = 0; lot < lots; lot++)
                    {
                        var cuts = FromLot[k][s][lot] * kind.Count();
                        wanted[lot, kind.Key] = wanted[lot, kind.Key] is { } sum ? sum + cuts : cuts;
                    }
                }
            }
        }

        for (var lot = 0; lot < lots; lot++)
        {
            for (var c = 0; c < lengths.Length; c++)
            {
                var given = LinearExpr.Sum(Enumerable.Range(0, Times.Length).Where(b => lotOf[b] == lot).Select(b => Times[b][c]));
                Model.Add(given == (wanted[lot, c] ?? LinearExpr.Constant(0)));
            }
        }
    }

    private void AddOrder()
    {
        foreach (var equal in Equal())
        {
            foreach (var (first, second) in equal.Zip(equal.Skip(1)))
            {
                Model.Add((Opened[first] * (ticks.Room[first] / unit)) - Rest[first] >= (Opened[second] * (ticks.Room[second] / unit)) - Rest[second]);
            }
        }
    }

    private void HintLots(ImmutableArray<BoltUse> uses)
    {
        for (var k = 0; k < FromLot.Length; k++)
        {
            var served = 0L;
            for (var s = 0; s < FromLot[k].Length; s++)
            {
                served = 0;
                for (var lot = 0; lot < lots; lot++)
                {
                    var count = uses.Where(u => lotOf[u.Bolt] == lot).SelectMany(u => u.Cuts)
                        .Where(c => c.Kit == k && c.Set == s && c.Cut == 0).Sum(c => (long)c.Times);
                    Model.AddHint(FromLot[k][s][lot], count);
                    served += count;
                }
            }

            Model.AddHint(Served[k], served);
        }
    }

    private long[][] TimesOf(ImmutableArray<BoltUse> uses)
    {
        long[][] times = [.. ticks.Room.Select(_ => new long[lengths.Length])];
        foreach (var use in uses)
        {
            foreach (var cut in use.Cuts)
            {
                times[use.Bolt][KindOf(ticks.Cuts[cut.Kit][cut.Set][cut.Cut])] += cut.Times;
            }
        }

        return times;
    }

    /// <summary>Exchanged among equal bolts as <see cref="AddOrder"/> wants them.</summary>
    private long[][] Ordered(long[][] times)
    {
        var ordered = times.ToArray();
        foreach (var equal in Equal())
        {
            foreach (var (bolt, row) in equal.Zip(equal.Select(b => times[b]).OrderByDescending(Used)))
            {
                ordered[bolt] = row;
            }
        }

        return ordered;
    }

    private long Used(long[] times) => times.Zip(lengths, (t, length) => t * (length / unit)).Sum();

    private IEnumerable<IGrouping<(int, long), int>> Equal() =>
        Enumerable.Range(0, Times.Length).GroupBy(b => (lotOf[b], ticks.Room[b]));

    private static long Gcd(long x, long y) => y == 0 ? x : Gcd(y, x % y);
}
