using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>
/// The sides of all patches and of the outline, cut wherever a corner of any lies on another. Patches fill the outline
/// exactly if, and only if, every piece is matched by its reverse.
/// </summary>
/// <remarks>
/// Why that suffices: with each patch simple and counterclockwise, the boundary of the sum of all patches less the
/// outline is zero, and a bounded plane region with no boundary is empty. Crossings need no look of their own.
/// </remarks>
internal sealed class EdgeNet
{
    private readonly (double X, double Y, Point Point)[] corners;
    private readonly List<Edge> pieces;

    private EdgeNet(List<Edge> edges)
    {
        corners = [.. edges.Select(e => e.From).Distinct().Select(p => (p.X.ToDouble(), p.Y.ToDouble(), p))];
        Array.Sort(corners, (a, b) => a.X.CompareTo(b.X));
        pieces = [.. edges.SelectMany(Split)];
    }

    /// <summary>The pieces that have no reverse left to match them, in the order of their patches.</summary>
    public static List<Edge> Unmatched(List<Edge> edges)
    {
        var pieces = new EdgeNet(edges).pieces;
        var open = new Dictionary<Edge, int>();
        foreach (var piece in pieces)
        {
            open[piece.Unowned] = open.GetValueOrDefault(piece.Unowned) + 1;
        }

        return [.. pieces.Where(piece => open[piece.Unowned] > open.GetValueOrDefault(piece.Reversed.Unowned))];
    }

    private IEnumerable<Edge> Split(Edge edge)
    {
        var reach = Reach.Of(edge);
        var on = new List<Point>();
        for (var at = FirstFrom(reach.Left); at < corners.Length && corners[at].X <= reach.Right; at++)
        {
            var (_, y, point) = corners[at];
            if (y >= reach.Bottom && y <= reach.Top && edge.Contains(point))
            {
                on.Add(point);
            }
        }

        return edge.SplitAt(on);
    }

    // Binary search for the first corner that is not left of x.
    private int FirstFrom(double x)
    {
        int low = 0,
            high = corners.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = corners[middle].X < x ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
