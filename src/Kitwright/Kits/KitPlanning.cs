using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;

namespace Kitwright.Kits;

/// <summary>From a shelf and a request to a kit plan: pure; the solver is handed in.</summary>
public static class KitPlanning
{
    /// <summary>The plan, or what is wrong with the request. A fabric that the shelf does not know counts as no bolt.</summary>
    /// <remarks>Where cloth is short, whole kits come first: what several fabrics share is dealt to them together.</remarks>
    /// <param name="solver"><see cref="BestFitDecreasing.Solver"/>, or a search that starts from it.</param>
    public static Checked<KitPlan> Plan(
        Shelf shelf,
        KitRequest request,
        KitTerms terms,
        IBoltSolver solver,
        CancellationToken cancel = default
    )
    {
        var findings = KitRequestRules.Findings(shelf, request, terms);
        if (findings.Any(f => f.Weight == Weight.Fault))
        {
            return Checked<KitPlan>.Failed(findings);
        }

        var cuts = request.Lines.Select(KitCutting.Of).ToImmutableArray();
        var problems = cuts.SelectMany(c => c)
            .GroupBy(c => c.Key, c => c.Value)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new BoltProblem(g.Key, shelf.BoltsOf(g.Key), [.. g], terms.LoadLoss, terms.UsefulRemnant, AllocationAim.Whole))
            .ToImmutableArray();
        var dealing = KitSharing.Of(problems, solver, cancel);
        var fabrics = problems.Zip(dealing.Allocations, (p, found) => Outcome(shelf, p, found)).ToImmutableArray();
        var carrying = new KitCarrying(shelf, terms, solver, cancel);
        var lines = request.Lines.Select((line, i) => carrying.Outcome(line, cuts[i], Complete(line, problems, fabrics))).ToImmutableArray();
        var orders = problems.Zip(fabrics, (p, f) => KitOrdering.Of(shelf, terms, f, p.Kits, solver, cancel));
        var atMost = lines.Sum(l => dealing.Kits.ContainsKey(l.Colorway) ? 0 : l.Wanted) + dealing.AtMost;
        return new(new(terms, lines, atMost, fabrics, [.. orders.OfType<OrderLine>()]), findings);
    }

    private static FabricOutcome Outcome(Shelf shelf, BoltProblem problem, BoltAllocation found) =>
        new(
            problem.Fabric,
            shelf.NameOf(problem.Fabric),
            problem.Bolts.Aggregate(Measure.Length.Zero, (sum, bolt) => sum + bolt.OnHand),
            KitDealing.Loads(problem, found),
            KitDealing.Short(problem, found),
            found.Figures,
            found.Goals,
            found.Method,
            found.Work,
            found.StoppedBy
        );

    /// <summary>Kits are served in the order of their numbers, so the least served fabric counts them.</summary>
    private static int Complete(KitLine line, ImmutableArray<BoltProblem> problems, ImmutableArray<FabricOutcome> fabrics)
    {
        var complete = line.Kits;
        for (var i = 0; i < problems.Length; i++)
        {
            var at = problems[i].Kits.Select(k => k.Colorway).ToList().IndexOf(line.Colorway);
            complete = at < 0 ? complete : Math.Min(complete, fabrics[i].Figures.Served[at]);
        }

        return complete;
    }
}
