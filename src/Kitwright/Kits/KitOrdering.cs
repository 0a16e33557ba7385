using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>What to order of a fabric so that the cuts left unmet can be made, in whole bolts of its put-up.</summary>
public static class KitOrdering
{
    /// <summary>The least order; null where nothing is short, or where a cut is longer than a new bolt gives.</summary>
    public static OrderLine? Of(
        Shelf shelf,
        KitTerms terms,
        FabricOutcome outcome,
        ImmutableArray<KitCuts> kits,
        IBoltSolver solver,
        CancellationToken cancel
    )
    {
        if (outcome.Short.IsEmpty)
        {
            return null;
        }

        var putUp = terms.PutUpOf(shelf, outcome.Fabric);
        ImmutableArray<KitCuts> unmet = [.. kits.Select((k, i) => k with { Kits = k.Kits - outcome.Figures.Served[i], Promised = 0 }).Where(k => k.Kits > 0)];
        if (unmet.SelectMany(k => k.Sets).SelectMany(s => s.Cuts).Any(c => c.Length > putUp - terms.LoadLoss))
        {
            return null;
        }

        // One bolt a cut is always enough; with no remnant worth keeping, waste counts the bolts.
        var plenty = new BoltProblem(outcome.Fabric, [], unmet, terms.LoadLoss, Length.Zero, AllocationAim.Whole);
        var simple = BestFitDecreasing.Solve(plenty with { Bolts = NewBolts.Of(outcome.Fabric, putUp, unmet.Sum(k => k.Kits * k.CutsPerKit)) }, null, cancel);
        var enough = plenty with { Bolts = NewBolts.Of(outcome.Fabric, putUp, simple.Figures.Opened) };
        var found = solver.Allocate(enough, simple, cancel);
        var bolts = found.Figures.Opened;
        var atLeast = (int)found.Goals.Single(g => g.Goal == AllocationGoal.Opened).Bound.Ceiling();
        var shortLength = outcome.ShortLength;
        return new(outcome.Fabric, outcome.Name, bolts, atLeast, putUp, shortLength, ((putUp - terms.LoadLoss) * bolts) - shortLength);
    }
}
