using System.Collections.Immutable;
using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>One template: a patch at its true size, for tracing and cutting by hand.</summary>
/// <param name="Block">Name of the block.</param>
/// <param name="Label">"T3": templates are numbered through the quilt.</param>
/// <param name="Role">Name of the role whose fabric it is cut from.</param>
/// <param name="Count">How many the quilt takes.</param>
/// <param name="Sewn">The line to sew on, counterclockwise; arcs as fine chords. Inches, y up, as it lies in its block.</param>
/// <param name="Cut">The line to cut on: a seam allowance outside, sharp points blunted.</param>
/// <param name="Marks">Places on the sewing line that meet a neighbor's corner or the middle of its edge.</param>
public sealed record TemplatePiece(
    string Block,
    string Label,
    string Role,
    int Count,
    ImmutableArray<Spot> Sewn,
    ImmutableArray<Spot> Cut,
    ImmutableArray<TemplateMark> Marks
)
{
    /// <summary>Whether it differs from its mirror image, so that it must lie right side up.</summary>
    public bool HasHand { get; init; }

    /// <summary>Label of the template of the same role that is its mirror image; null where there is none.</summary>
    public string? Mirror { get; init; }

    public (Spot Low, Spot High) Extent =>
        (new(Cut.Min(p => p.X), Cut.Min(p => p.Y)), new(Cut.Max(p => p.X), Cut.Max(p => p.Y)));
}

/// <summary>A short line across the seam allowance.</summary>
/// <param name="Outward">Of length one.</param>
public readonly record struct TemplateMark(Spot At, Spot Outward);
