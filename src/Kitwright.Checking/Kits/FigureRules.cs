using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Checking.Kits;

/// <summary>Figures are what the loads come to; a bound never claims more than the figure beside it.</summary>
internal static class FigureRules
{
    public static void Check(KitPlan plan, KitRequest request, FindingList findings)
    {
        foreach (var fabric in plan.Fabrics)
        {
            CheckFigures(plan.Terms, fabric, findings);
            CheckGoals(fabric, findings);
        }

        foreach (var line in plan.Lines)
        {
            CheckCarries(line, request, findings);
        }

        var complete = plan.Lines.Sum(l => (long)l.Complete);
        if (plan.CompleteAtMost < complete || plan.CompleteAtMost > plan.Lines.Sum(l => (long)l.Wanted))
        {
            findings.Add("check.kits.at-most", "kits", Say.Count(plan.CompleteAtMost), Say.AtLeast(Say.Count(complete)));
        }
    }

    private static void CheckFigures(KitTerms terms, FabricOutcome fabric, FindingList findings)
    {
        var waste = Length.Zero;
        var kept = Length.Zero;
        foreach (var load in fabric.Loads)
        {
            waste += load.Loss + (load.Remnant < terms.UsefulRemnant ? load.Remnant : Length.Zero);
            kept = load.Remnant >= terms.UsefulRemnant ? Length.Max(kept, load.Remnant) : kept;
        }

        var figures = fabric.Figures;
        Compare("waste", Say.Inches(figures.Waste), Say.Inches(waste));
        Compare("kept", Say.Inches(figures.Kept), Say.Inches(kept));
        Compare("opened", Say.Count(figures.Opened), Say.Count(fabric.Loads.Length));
        Compare("unmet", Say.Count(figures.Unmet), Say.Count(fabric.Short.Sum(s => s.Kits)));

        void Compare(string figure, Message measured, Message expected)
        {
            if (measured != expected)
            {
                findings.Add("check.kits.figure", $"fabric/{fabric.Fabric}/{figure}", measured, expected, ("fabric", fabric.Name));
            }
        }
    }

    private static void CheckGoals(FabricOutcome fabric, FindingList findings)
    {
        foreach (var goal in fabric.Goals)
        {
            var (figure, best) = goal.Goal switch
            {
                AllocationGoal.Unmet => ((Rational)fabric.Figures.Unmet, goal.Bound <= goal.Value),
                AllocationGoal.Waste => (fabric.Figures.Waste.InInches, goal.Bound <= goal.Value),
                AllocationGoal.Opened => ((Rational)fabric.Figures.Opened, goal.Bound <= goal.Value),
                _ => (fabric.Figures.Kept.InInches, goal.Bound >= goal.Value),
            };
            if (figure != goal.Value || !best)
            {
                findings.Add("check.kits.bound", $"fabric/{fabric.Fabric}/{goal.Goal}", ("fabric", fabric.Name));
            }
        }
    }

    private static void CheckCarries(LineOutcome line, KitRequest request, FindingList findings)
    {
        var least = line.Fabrics.Select(f => f.Kits).DefaultIfEmpty(0).Min();
        var most = line.Fabrics.Select(f => f.AtMost).DefaultIfEmpty(0).Min();
        if (line.Carries != least || line.CarriesAtMost != most || least > most)
        {
            findings.Add("check.kits.carries", $"kit/{line.Colorway}", Say.Count(line.Carries), Say.Count(least), ("colorway", line.Colorway));
        }

        var needs = request.Lines.FirstOrDefault(l => l.Colorway == line.Colorway)?.Needs.Lengths ?? [];
        foreach (var number in needs.Select(n => n.Fabric).Distinct().Where(n => line.Fabrics.All(f => f.Fabric != n)))
        {
            findings.Add("check.kits.fabric-missing", $"kit/{line.Colorway}", ("fabric", number ?? ""));
        }
    }
}
