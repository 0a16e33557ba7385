using System.Collections.Immutable;

namespace Kitwright.Plans;

/// <summary>Printed panels that are cut alike.</summary>
/// <param name="Times">How many panels.</param>
/// <param name="Strips">What is cut from each.</param>
/// <param name="Spares">How many of the kit's spare strips each has room for beside them.</param>
public sealed record PanelCut(int Times, ImmutableArray<PanelStrip> Strips, int Spares);

/// <summary>So many of a plan's equal strips.</summary>
public sealed record PanelStrip(PathId Strip, int Times);
