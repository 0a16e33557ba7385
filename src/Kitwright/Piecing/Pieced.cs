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
);
