using System.Collections.Immutable;
using System.Text.Json.Serialization;
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
/// <remarks>
/// How the bound follows from the duals, for plans of two stages. All in whole units: <c>W</c> is
/// <see cref="ClothTerms.StripLength"/> divided by <paramref name="Unit"/> and rounded down (the sizes need not
/// divide it); demand <c>i</c> has width <c>w</c>, height <c>h</c>, count <c>d</c> and dual <c>π ≥ 0</c>.
/// <list type="number">
/// <item>The ways to lay a piece are (w, h) and, where it may turn, (h, w); those wider than <c>W</c> drop out, and so
/// do demands of count 0. The candidate heights are the heights of the ways that remain: a strip is never higher than
/// its highest piece.</item>
/// <item><c>V(H)</c> is the greatest sum of duals over sets of ways no higher than <c>H</c> whose widths add up to at
/// most <c>W</c>, each way taken at most <c>d</c> times (the two ways of one demand are not held to <c>d</c>
/// together).</item>
/// <item><c>ρ = max(1, max over candidate heights of V(H) / (H · Scale))</c>; then no plan takes less than
/// <c>⌈Σ d·π / (ρ · Scale)⌉</c>. Rational arithmetic throughout.</item>
/// <item>That number is rounded up to the next sum of candidate heights, each as often as one likes.
/// <paramref name="Bound"/> is the outcome times <paramref name="Unit"/>.</item>
/// </list>
/// Where <paramref name="Duals"/> is empty and there are no <see cref="Cases"/>, step 2 and 3 are replaced by <c>⌈Σ d·w·h / W⌉</c>, the area. Where
/// <paramref name="Searched"/> is set, <paramref name="Bound"/> is above what the duals give, and the difference is the word
/// of an exhausted search.
/// <para>
/// Where <see cref="Cases"/> are given, they take the place of steps 2 and 3. They are a binary tree, the
/// upper entry before the lower ones, the first side of a split before the second. A split parts the plans with at most so
/// many strips of a candidate height from those with more. At the top every candidate height <c>H</c> has between
/// <c>lo = 0</c> and <c>hi</c> strips, as many as there are pieces of the demands with a way of height <c>H</c>; a split lowers
/// <c>hi</c> to its number on the first side, and raises <c>lo</c> to one more than it on the second. A leaf has duals
/// <c>π ≥ 0</c> of its own and a dual <c>σ</c> of either sign for each candidate height, such that
/// <c>V(H) + σ(H) ≤ H · Scale</c> for all of them; then no plan of its case takes less than
/// <c>⌈(Σ d·π + Σ (σ &gt; 0 ? lo·σ : hi·σ)) / Scale⌉</c>. The bound is the least over the leaves, rounded up as in step 4.
/// </para>
/// </remarks>
/// <param name="Status">What may be said.</param>
/// <param name="Bound">No way of cutting strips across the width takes less than this sum of strip heights.</param>
/// <param name="Unit">A length of which every width and height of the demand is a whole multiple.</param>
/// <param name="Scale">Duals are <c>value / Scale</c> units of height per piece.</param>
/// <param name="Duals">One per demand, in the order of the demand; empty where the bound is by area only, or by cases.</param>
/// <param name="Method">Name of the method that found the plan, for the record.</param>
/// <param name="Work">Steps done against the limit, for the record; equal on every run of the same version.</param>
/// <param name="StoppedBy">What ended the search: <c>done</c>, <c>work-limit</c>, <c>clock</c>, <c>cancel</c>.</param>
/// <param name="Searched">
/// True where an exhausted search, which is trusted, raised the bound above what can be recomputed: always so with
/// <see cref="ProofStatus.ProvedBySearch"/>, never with <see cref="ProofStatus.Proved"/>.
/// </param>
public sealed record Proof(
    ProofStatus Status,
    Length Bound,
    Length Unit,
    long Scale,
    ImmutableArray<long> Duals,
    string Method,
    long Work,
    string StoppedBy,
    bool Searched
)
{
    /// <summary>Null where one set of duals, or the area, gives the bound.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<ProofCase>? Cases { get; init; }
}
