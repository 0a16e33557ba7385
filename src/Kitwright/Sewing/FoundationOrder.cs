using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Sewing;

/// <summary>
/// The order in which the patches of a block can be sewn onto a printed foundation: each is joined by one straight seam
/// that has everything sewn before it on its other side.
/// </summary>
/// <remarks>
/// Found from the end: a patch that a line along one of its edges parts from all the rest may be sewn last, and what is
/// left is looked at again. A patch that can be parted off still can be after others have gone, so any choice is as good
/// as any other, and where none is left the block has no such order (own proof).
/// </remarks>
public static class FoundationOrder
{
    /// <summary>Indices of the patches in the order of sewing; null where no order exists.</summary>
    public static ImmutableArray<int>? Of(ImmutableArray<Polygon> patches)
    {
        var rest = Enumerable.Range(0, patches.Length).ToList();
        var last = new Stack<int>();
        while (rest.Count > 1)
        {
            // The highest number goes first: blocks are drawn in the order of sewing, and drawn order is kept where it can be.
            var next = rest.FindLastIndex(patch => Parts(patches, patch, rest));
            if (next < 0)
            {
                return null;
            }

            last.Push(rest[next]);
            rest.RemoveAt(next);
        }

        return [.. rest, .. last];
    }

    private static bool Parts(ImmutableArray<Polygon> patches, int patch, List<int> rest)
    {
        var corners = patches[patch].Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            var line = new Line(corners[i], corners[(i + 1) % corners.Length]);
            if (corners.All(c => line.SideOf(c) >= 0) && rest.All(other => other == patch || patches[other].Corners.All(c => line.SideOf(c) <= 0)))
            {
                return true;
            }
        }

        return false;
    }
}
