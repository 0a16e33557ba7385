using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>How far the length of a cutting plan is known to be least.</summary>
public enum ProofStatus
{
    /// <summary>A plan by a method that proves nothing beyond the bound it carries.</summary>
    Within,

    /// <summary>The bound, which anybody can recompute from the duals, meets the length.</summary>
    Proved,

    /// <summary>An exhausted search shows that nothing shorter exists; the search itself is trusted.</summary>
    ProvedBySearch,
}

/// <summary>
/// A lower bound on the sum of strip heights, and the integers from which it can be recomputed (Farley's bound:
/// A. A. Farley, "A note on bounding a class of linear programming problems", Operations Research 38(5), 1990).
/// </summary>
/// <param name="Status">What may be said.</param>
/// <param name="Bound">No way of cutting strips across the width takes less than this sum of strip heights.</param>
/// <param name="Unit">The integer grid of the duals' knapsack: every size is a multiple of it.</param>
/// <param name="Scale">Duals are <c>value / Scale</c> units of height per piece.</param>
/// <param name="Duals">One per demand, in the order of the demand; empty where the bound is by area only.</param>
/// <param name="Method">Name of the method that found the plan, for the record.</param>
/// <param name="Work">Work done against the limit (columns priced plus nodes), for the record.</param>
/// <param name="StoppedBy">What ended the search: <c>done</c>, <c>work-limit</c>, <c>clock</c>, <c>cancel</c>.</param>
public sealed record Proof(
    ProofStatus Status,
    Length Bound,
    Length Unit,
    long Scale,
    ImmutableArray<long> Duals,
    string Method,
    long Work,
    string StoppedBy
);
