using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Partitions;

/// <summary>
/// Whether patches fill a block exactly: nothing missing, nothing twice, nothing outside. Every answer is exact.
/// </summary>
public static class Partition
{
    /// <summary>Findings on the block's drawing; none where its patches fill it.</summary>
    /// <param name="place">Where the block stands, as a JSON pointer; a patch adds <c>/patches/3</c>.</param>
    /// <param name="units">What points are told in, from the block's lower left corner.</param>
    public static ImmutableArray<Finding> Check(Block block, string place, LengthUnit units = LengthUnit.Inch)
    {
        var tell = new Telling(block, place, units);
        var edges = new List<Edge>();
        var outline = Polygon.Rectangle(0, 0, block.Width, block.Height);
        for (var i = 0; i < block.Patches.Length; i++)
        {
            var sides = PatchShape.Trace(block.Patches[i], i, out var rule, out var at);
            if (sides is null)
            {
                tell.Patch(rule, i, at);
            }
            else if (sides.Any(e => outline.Where(e.From) == Side.Outside))
            {
                tell.Patch("quilt.outside", i, sides.First(e => outline.Where(e.From) == Side.Outside).From);
            }
            else
            {
                edges.AddRange(sides);
            }
        }

        if (tell.Findings.Count == 0)
        {
            AddOutline(edges, outline);
            Misfit.Tell(edges, EdgeNet.Unmatched(edges), block, tell);
        }

        return tell.Findings.ToImmutable();
    }

    // Clockwise: its left is the outside, which counts as one more patch.
    private static void AddOutline(List<Edge> edges, Polygon outline)
    {
        var corners = outline.Corners;
        for (var i = corners.Length; i > 0; i--)
        {
            edges.Add(new(corners[i % corners.Length], corners[i - 1], null, false, Edge.Outside));
        }
    }
}
