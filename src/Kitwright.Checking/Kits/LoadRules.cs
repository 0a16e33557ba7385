using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;

namespace Kitwright.Checking.Kits;

/// <summary>Each load is a bolt of the shelf, put on the table once, and gives no more than it has.</summary>
internal static class LoadRules
{
    public static void Check(Shelf shelf, KitPlan plan, FindingList findings)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fabric in plan.Fabrics)
        {
            foreach (var load in fabric.Loads)
            {
                if (!seen.Add(load.Bolt))
                {
                    findings.Add("check.kits.bolt-twice", load.Id.Value, ("bolt", load.Bolt));
                }

                CheckBolt(shelf, fabric.Fabric, load, findings);
                CheckLengths(plan.Terms, load, findings);
            }
        }
    }

    private static void CheckBolt(Shelf shelf, string fabric, BoltLoad load, FindingList findings)
    {
        var bolt = shelf.Bolts.FirstOrDefault(b => b.Id == load.Bolt);
        if (bolt is null || bolt.Fabric != fabric || bolt.Lot != load.Lot)
        {
            findings.Add("check.kits.bolt-unknown", load.Id.Value, ("bolt", load.Bolt), ("fabric", fabric), ("lot", load.Lot));
        }
        else if (bolt.OnHand != load.OnHand)
        {
            findings.Add("check.kits.on-hand", load.Id.Value, Say.Inches(load.OnHand), Say.Inches(bolt.OnHand), ("bolt", load.Bolt));
        }
    }

    private static void CheckLengths(KitTerms terms, BoltLoad load, FindingList findings)
    {
        if (load.Loss != terms.LoadLoss)
        {
            findings.Add("check.kits.load-loss", load.Id.Value, Say.Inches(load.Loss), Say.Inches(terms.LoadLoss), ("bolt", load.Bolt));
        }

        var taken = load.Loss;
        foreach (var cut in load.Cuts)
        {
            taken += cut.Length;
        }

        if (taken > load.OnHand)
        {
            findings.Add("check.kits.bolt-short", load.Id.Value, Say.Inches(taken), Say.AtMost(Say.Inches(load.OnHand)), ("bolt", load.Bolt));
        }
        else if (load.Remnant != load.OnHand - taken)
        {
            findings.Add("check.kits.remnant", load.Id.Value, Say.Inches(load.Remnant), Say.Inches(load.OnHand - taken), ("bolt", load.Bolt));
        }

        if (load.Cuts.IsEmpty || load.Cuts.Any(c => c.Length <= Length.Zero))
        {
            findings.Add("check.kits.empty-load", load.Id.Value, ("bolt", load.Bolt));
        }
    }
}
