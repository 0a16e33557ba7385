using System.Collections.Immutable;

namespace Kitwright.Kits;

/// <summary>
/// Deals every fabric to the lines that want it. Fabrics that suffice are dealt one by one; those that are short are
/// first looked at together, so that cloth goes to kits that come out whole.
/// </summary>
internal static class KitSharing
{
    /// <summary>Allocations in the order of the problems, and how many kits the short fabrics fill.</summary>
    public static KitFilling Of(ImmutableArray<BoltProblem> problems, IBoltSolver solver, CancellationToken cancel)
    {
        ImmutableArray<int> tight = [.. Enumerable.Range(0, problems.Length).Where(i => IsShort(problems[i], solver, cancel))];
        var filling = tight.IsEmpty
            ? new KitFilling(ImmutableSortedDictionary<string, int>.Empty, 0, [])
            : solver.Fill([.. tight.Select(i => problems[i])], cancel);
        return filling with
        {
            Allocations = [.. problems.Select((p, i) => Allocate(p, tight.IndexOf(i)))],
        };

        BoltAllocation Allocate(BoltProblem problem, int at) =>
            at < 0
                ? solver.Allocate(problem, null, cancel)
                : solver.Allocate(
                    problem with { Kits = [.. problem.Kits.Select(k => k with { Promised = filling.Kits[k.Colorway] })] },
                    filling.Allocations[at],
                    cancel
                );
    }

    private static bool IsShort(BoltProblem problem, IBoltSolver solver, CancellationToken cancel) =>
        !BestFitDecreasing.Serves(problem)
        && solver.Allocate(problem with { Aim = AllocationAim.Count }, null, cancel).Figures.Unmet > 0;
}
