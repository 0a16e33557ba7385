using System.Collections.Immutable;
using Kitwright.Kits;
using Kitwright.Measure;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>Tries every way of cutting a small problem; shares no code with the methods that it judges.</summary>
internal static class ExhaustiveSearch
{
    /// <summary>Fewest unmet cuts, then least waste, fewest bolts opened, longest remnant kept.</summary>
    public static (int Unmet, Rational Waste, int Opened, Rational Kept) Best(BoltProblem problem)
    {
        var used = new Rational[problem.Bolts.Length];
        (int, Rational, int, Rational)? best = null;
        List<KitCuts> kits = [.. problem.Kits.SelectMany(k => Enumerable.Repeat(k, k.Kits))];
        Kit(0, 0);
        return (best!.Value.Item1, best.Value.Item2, best.Value.Item3, -best.Value.Item4);

        void Kit(int kit, int unmet)
        {
            if (kit == kits.Count)
            {
                var value = Value(problem, used, unmet);
                best = best is null || value.CompareTo(best.Value) < 0 ? value : best;
                return;
            }

            Kit(kit + 1, unmet + kits[kit].Sets.Sum(s => s.Cuts.Length));
            Cuts(kit, [.. kits[kit].Sets.SelectMany((s, i) => s.Cuts.Select(c => (i, c.Length.InInches)))], 0, [], unmet);
        }

        void Cuts(int kit, ImmutableArray<(int Set, Rational Length)> cuts, int at, ImmutableDictionary<int, string> lots, int unmet)
        {
            if (at == cuts.Length)
            {
                Kit(kit + 1, unmet);
                return;
            }

            for (var bolt = 0; bolt < used.Length; bolt++)
            {
                var lot = problem.Bolts[bolt].Lot;
                var room = problem.Bolts[bolt].OnHand.InInches - problem.LoadLoss.InInches;
                if (lots.GetValueOrDefault(cuts[at].Set, lot) == lot && used[bolt] + cuts[at].Length <= room)
                {
                    used[bolt] += cuts[at].Length;
                    Cuts(kit, cuts, at + 1, lots.SetItem(cuts[at].Set, lot), unmet);
                    used[bolt] -= cuts[at].Length;
                }
            }
        }
    }

    private static (int, Rational, int, Rational) Value(BoltProblem problem, Rational[] used, int unmet)
    {
        Rational waste = 0;
        Rational kept = 0;
        var opened = 0;
        for (var bolt = 0; bolt < used.Length; bolt++)
        {
            if (used[bolt].IsZero)
            {
                continue;
            }

            var rest = problem.Bolts[bolt].OnHand.InInches - problem.LoadLoss.InInches - used[bolt];
            opened++;
            waste += problem.LoadLoss.InInches;
            waste += rest < problem.UsefulRemnant.InInches ? rest : 0;
            kept = rest >= problem.UsefulRemnant.InInches ? Rational.Max(kept, rest) : kept;
        }

        return (unmet, waste, opened, -kept);
    }
}
