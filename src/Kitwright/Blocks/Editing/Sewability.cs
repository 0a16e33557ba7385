using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.Blocks.Editing;

/// <summary>How a drawn block can be sewn.</summary>
/// <param name="Curved">Whether any seam is curved; then nothing is said about the others.</param>
/// <param name="SetIn">Indices of patches among which no straight seam divides what is left; empty where straight seams do.</param>
/// <param name="Slender">Indices of patches that are nowhere as wide as both their seam allowances.</param>
public sealed record Sewability(bool Curved, ImmutableArray<int> SetIn, ImmutableArray<int> Slender)
{
    /// <param name="width">The finished width that the block will have.</param>
    public static Sewability Of(BookBlock block, Length width, Length seam)
    {
        var curved = block.Patches.Any(p => p.Arcs.Length > 0);
        var unit = (width / block.Grid.Columns).InInches;
        return new(
            curved,
            curved ? [] : [.. Stuck(block).Order()],
            [.. Enumerable.Range(0, block.Patches.Length).Where(i => NarrowPatches.IsNarrower(BlockEdits.Shape(block.Patches[i]), unit, seam * 2))]
        );
    }

    private static IEnumerable<int> Stuck(BookBlock block)
    {
        // Roles do not matter to seams: each patch is named by its index.
        var open = new Stack<Region>([new([.. block.Patches.Select((p, i) => new Item(BlockEdits.Shape(p), $"{i}", null, Motion.Identity))])]);
        while (open.TryPop(out var region))
        {
            if (region.Items.Length == 1)
            {
                continue;
            }

            if (StraightCuts.Of(region) is { } cuts)
            {
                foreach (var part in cuts.Parts)
                {
                    open.Push(part);
                }
            }
            else
            {
                foreach (var item in region.Items)
                {
                    yield return int.Parse(item.Role!, System.Globalization.CultureInfo.InvariantCulture);
                }
            }
        }
    }
}
