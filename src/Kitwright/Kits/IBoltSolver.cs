using System.Collections.Immutable;

namespace Kitwright.Kits;

/// <summary>Deals bolts to kits; deterministic under a work limit of its own, and always answers.</summary>
public interface IBoltSolver
{
    /// <summary>The cuts of one fabric.</summary>
    /// <param name="start">An allocation to begin from; needed only where promises are made that best fit may not keep.</param>
    BoltAllocation Allocate(BoltProblem problem, BoltAllocation? start, CancellationToken cancel);

    /// <summary>As many whole kits as can be where several fabrics are short, each of which serves some of the lines.</summary>
    /// <param name="fabrics">The fabrics that are short; a line's kits wanted are the same in each.</param>
    KitFilling Fill(ImmutableArray<BoltProblem> fabrics, CancellationToken cancel);
}

/// <summary>How many kits of each line the short fabrics fill together.</summary>
/// <param name="Kits">By colorway; a colorway that no short fabric serves is not named.</param>
/// <param name="AtMost">No dealing fills more kits of these colorways together.</param>
/// <param name="Allocations">One per fabric, in which exactly these kits are served.</param>
public sealed record KitFilling(
    ImmutableSortedDictionary<string, int> Kits,
    int AtMost,
    ImmutableArray<BoltAllocation> Allocations
);
