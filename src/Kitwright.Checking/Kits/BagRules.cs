using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Kits;

/// <summary>Opens every kit: each need is there once, of one lot with what it is seen beside, or listed as short.</summary>
internal static class BagRules
{
    private readonly record struct Given(LoadCut Cut, string Fabric, string Lot);

    public static void Check(KitRequest request, KitPlan plan, FindingList findings)
    {
        var bags = plan.Fabrics
            .SelectMany(f => f.Loads.SelectMany(l => l.Cuts.Select(c => new Given(c, f.Fabric, l.Lot))))
            .GroupBy(g => (g.Cut.Colorway, g.Cut.Kit))
            .ToDictionary(g => g.Key, g => g.ToList());
        var ids = bags.Values.SelectMany(b => b).GroupBy(g => g.Cut.Id).FirstOrDefault(g => g.Count() > 1);
        if (ids is not null)
        {
            findings.Add("check.kits.cut-twice", ids.Key.Value);
        }

        foreach (var line in request.Lines)
        {
            CheckLine(line, plan, bags, findings);
        }

        foreach (var stray in bags.Keys)
        {
            findings.Add("check.kits.stray", $"kit/{stray.Colorway}/{stray.Kit}");
        }
    }

    /// <summary>Takes the line's bags out of the pile.</summary>
    private static void CheckLine(
        KitLine line,
        KitPlan plan,
        Dictionary<(string Colorway, int Kit), List<Given>> bags,
        FindingList findings
    )
    {
        var complete = 0;
        for (var kit = 1; kit <= line.Kits; kit++)
        {
            var bag = bags.Remove((line.Colorway, kit), out var held) ? held : [];
            var missing = Missing(line, bag, $"kit/{line.Colorway}/{kit}", findings);
            complete += missing.Count == 0 ? 1 : 0;
            foreach (var need in missing.Where(need => !ListedShort(plan, line, kit, need)))
            {
                var want = line.Needs.Lengths[need];
                findings.Add("check.kits.missing", $"kit/{line.Colorway}/{kit}", ("letter", want.Letter), ("length", want.Length));
            }

            CheckLots(line, bag, $"kit/{line.Colorway}/{kit}", findings);
        }

        var outcome = plan.Lines.FirstOrDefault(l => l.Colorway == line.Colorway);
        if (outcome is null || outcome.Wanted != line.Kits || outcome.Complete != complete)
        {
            findings.Add("check.kits.complete", $"kit/{line.Colorway}", Say.Count(outcome?.Complete ?? 0), Say.Count(complete), ("colorway", line.Colorway));
        }
    }

    /// <summary>The needs, by their place, that the bag lacks.</summary>
    private static HashSet<int> Missing(KitLine line, List<Given> bag, string place, FindingList findings)
    {
        var open = Enumerable.Range(0, line.Needs.Lengths.Length).ToHashSet();
        foreach (var given in bag)
        {
            if (!Fits(line, given) || !open.Remove(given.Cut.Need))
            {
                findings.Add("check.kits.not-wanted", place, ("letter", given.Cut.Letter), ("length", given.Cut.Length));
            }
        }

        return open;
    }

    private static bool Fits(KitLine line, Given given)
    {
        if (given.Cut.Need < 0 || given.Cut.Need >= line.Needs.Lengths.Length)
        {
            return false;
        }

        var need = line.Needs.Lengths[given.Cut.Need];
        var more = given.Cut.Length - need.Length;
        return need.Fabric == given.Fabric
            && (need.Letter, need.Kind) == (given.Cut.Letter, given.Cut.Kind)
            // Longer than its need by less than the stored grid, never shorter.
            && more.Sign >= 0
            && more < Length.Ticks(1);
    }

    private static bool ListedShort(KitPlan plan, KitLine line, int kit, int need) =>
        plan.Fabrics.Where(f => f.Fabric == line.Needs.Lengths[need].Fabric)
            .SelectMany(f => f.Short)
            .Any(s => s.Colorway == line.Colorway && s.Need == need && kit >= s.FirstKit && kit < s.FirstKit + s.Kits);

    private static void CheckLots(KitLine line, List<Given> bag, string place, FindingList findings)
    {
        foreach (var x in bag)
        {
            foreach (var y in bag.Where(y => y.Fabric == x.Fabric && y.Lot != x.Lot))
            {
                var bothSeen = x.Cut.Kind != NeedKind.Backing && y.Cut.Kind != NeedKind.Backing;
                if (bothSeen || Roles(line, x).Intersect(Roles(line, y)).Any())
                {
                    findings.Add("check.kits.lots", place, ("fabric", x.Fabric), ("first", x.Lot), ("second", y.Lot));
                    return;
                }
            }
        }
    }

    private static IEnumerable<string> Roles(KitLine line, Given given) =>
        Fits(line, given) ? line.Needs.Lengths[given.Cut.Need].Roles : [];
}
