using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Kits;

/// <summary>
/// Says which kit gets which cut: kits are numbered from 1 and served in that order, lot by lot, so that the cuts of
/// one set of one kit are of one lot.
/// </summary>
public static class KitDealing
{
    public static ImmutableArray<BoltLoad> Loads(BoltProblem problem, BoltAllocation allocation)
    {
        var next = new Dictionary<(int Kit, int Set, int Cut), int>();
        var cuts = new Dictionary<int, List<LoadCut>>();
        string[] lots = [.. problem.Bolts.Select(b => b.Lot).Distinct(StringComparer.Ordinal)];
        foreach (var use in allocation.Uses.OrderBy(u => Array.IndexOf(lots, problem.Bolts[u.Bolt].Lot)))
        {
            var list = cuts[use.Bolt] = [];
            foreach (var cut in use.Cuts)
            {
                var kits = problem.Kits[cut.Kit];
                var first = next.GetValueOrDefault((cut.Kit, cut.Set, cut.Cut)) + 1;
                list.AddRange(Enumerable.Range(first, cut.Times).Select(kit => Cut(kits, kits.Sets[cut.Set].Cuts[cut.Cut], kit)));
                next[(cut.Kit, cut.Set, cut.Cut)] = first + cut.Times - 1;
            }
        }

        return [.. allocation.Uses.Select(use => Load(problem, use, [.. InTableOrder(cuts[use.Bolt])]))];
    }

    public static ImmutableArray<ShortCut> Short(BoltProblem problem, BoltAllocation allocation) =>
        [
            .. problem.Kits.SelectMany((kits, i) =>
            {
                var served = allocation.Figures.Served[i];
                return kits.Kits == served
                    ? []
                    : kits.Sets.SelectMany(s => s.Cuts)
                        .OrderBy(c => c.Need)
                        .Select(c => new ShortCut(kits.Colorway, served + 1, kits.Kits - served, c.Need, c.Letter, c.Kind, c.Length));
            }),
        ];

    private static LoadCut Cut(KitCuts kits, KitCut cut, int kit) =>
        new(
            default(PathId).Child("kit", kits.Colorway).Child($"{kit}/need", cut.Need + 1),
            kits.Colorway,
            kit,
            cut.Need,
            cut.Letter,
            cut.Kind,
            cut.Length
        );

    // Equal lengths together and the longest first: fewest settings, and a bolt that runs short spoils the least.
    private static IEnumerable<LoadCut> InTableOrder(IEnumerable<LoadCut> cuts) =>
        cuts.OrderByDescending(c => c.Length)
            .ThenBy(c => c.Colorway, StringComparer.Ordinal)
            .ThenBy(c => c.Letter, StringComparer.Ordinal)
            .ThenBy(c => c.Kit);

    private static BoltLoad Load(BoltProblem problem, BoltUse use, ImmutableArray<LoadCut> cuts)
    {
        var bolt = problem.Bolts[use.Bolt];
        var remnant = cuts.Aggregate(bolt.OnHand - problem.LoadLoss, (rest, cut) => rest - cut.Length);
        return new(default(PathId).Child("load", bolt.Id), bolt.Id, bolt.Lot, bolt.OnHand, problem.LoadLoss, cuts, remnant);
    }
}
