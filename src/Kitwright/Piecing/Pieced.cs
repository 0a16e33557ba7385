using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>What piecing answers: every cut piece with its count and label, and how the quilt is sewn from them.</summary>
public sealed record Pieced(
    ImmutableArray<CutPiece> Pieces,
    SewingPlan Sewing,
    BindingPlan Binding,
    BackingPlan Backing,
    BattingNeed Batting
)
{
    /// <summary>How many units there are of each kind that can be made in several ways.</summary>
    public ImmutableSortedDictionary<string, int> UnitKinds { get; init; } = ImmutableSortedDictionary<string, int>.Empty;
}
