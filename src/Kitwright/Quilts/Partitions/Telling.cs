using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Partitions;

/// <summary>Says what is wrong with a block's drawing, in the drawing's own units.</summary>
internal sealed class Telling(Block block, string place, LengthUnit units)
{
    private readonly Length unit = LengthText.Of(1, units);

    public ImmutableArray<Finding>.Builder Findings { get; } = ImmutableArray.CreateBuilder<Finding>();

    public bool IsFull => Findings.Count >= QuiltLimits.Findings;

    public string Text(Point point) => $"({SurdText.Format(point.X / unit)}, {SurdText.Format(point.Y / unit)})";

    /// <summary>A finding about one patch at a point.</summary>
    public void Patch(string rule, int patch, Point at, params ReadOnlySpan<(string Name, object Value)> more) =>
        Findings.Add(
            Finding.Of(
                rule,
                $"{place}/patches/{patch}",
                [("block", block.Id), ("patch", block.Patches[patch].Id), ("at", Text(at)), .. more]
            )
        );

    /// <summary>A finding about the block at a point.</summary>
    public void Block(string rule, Point at, params ReadOnlySpan<(string Name, object Value)> more) =>
        Findings.Add(Finding.Of(rule, place, [("block", block.Id), ("at", Text(at)), .. more]));
}
