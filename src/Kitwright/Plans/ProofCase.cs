using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>One entry of a bound by cases: either a split, or a leaf. How they are read stands with <see cref="Proof"/>.</summary>
public sealed record ProofCase
{
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CountCases? Split { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CaseDuals? Leaf { get; init; }
}

/// <summary>Plans with at most so many strips of a height, and plans with more.</summary>
/// <param name="Height">A candidate height.</param>
public sealed record CountCases(Length Height, int AtMost);

/// <summary>The duals of one case, in the proof's scale.</summary>
/// <param name="Duals">One per demand, in the order of the demand; none negative.</param>
/// <param name="HeightDuals">One per candidate height, the lowest first; of either sign.</param>
public sealed record CaseDuals(ImmutableArray<long> Duals, ImmutableArray<long> HeightDuals);
