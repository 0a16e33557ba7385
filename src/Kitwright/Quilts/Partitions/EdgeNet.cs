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
    // Doubles only sort out what is far away; what is near is decided exactly.
    private const double Near = 1e-6;

    private readonly (double X, Point Point)[] corners;

    private EdgeNet(IReadOnlyList<Edge> edges, IEnumerable<Point> more)
    {
        corners = [.. edges.Select(e => e.From).Concat(more).Distinct().Select(p => (p.X.ToDouble(), p))];
        Array.Sort(corners, (a, b) => a.X.CompareTo(b.X));
        Pieces = [.. edges.SelectMany(Split)];
    }

    public IReadOnlyList<Edge> Pieces { get; }

    /// <param name="more">Further points at which to cut.</param>
    public static EdgeNet Of(IReadOnlyList<Edge> edges, params IEnumerable<Point> more) => new(edges, more);

    private IEnumerable<Edge> Split(Edge edge)
    {
        var (low, high) = Reach(edge);
        var at = Array.BinarySearch(corners, (low, default), Comparer<(double X, Point)>.Create((a, b) => a.X.CompareTo(b.X)));
        at = at < 0 ? ~at : at;
        while (at > 0 && corners[at - 1].X >= low)
        {
            at--;
        }

        var on = new List<Point>();
        for (; at < corners.Length && corners[at].X <= high; at++)
        {
            if (edge.Contains(corners[at].Point))
            {
                on.Add(corners[at].Point);
            }
        }

        return edge.SplitAt(on);
    }

    private static (double Low, double High) Reach(Edge edge)
    {
        double x = edge.From.X.ToDouble(),
            other = edge.To.X.ToDouble();
        if (edge.Center is { } center)
        {
            var step = edge.From - center;
            var radius = Math.Sqrt(Point.Dot(step, step).ToDouble());
            return (center.X.ToDouble() - radius - Near, center.X.ToDouble() + radius + Near);
        }

        return (Math.Min(x, other) - Near, Math.Max(x, other) + Near);
    }

    /// <summary>The pieces that have no reverse left to match them, in the order of their patches.</summary>
    public List<Edge> Unmatched()
    {
        var open = new Dictionary<Edge, int>();
        foreach (var piece in Pieces)
        {
            open[piece.Unowned] = open.GetValueOrDefault(piece.Unowned) + 1;
        }

        var unmatched = new List<Edge>();
        foreach (var piece in Pieces)
        {
            var excess = open[piece.Unowned] - open.GetValueOrDefault(piece.Reversed.Unowned);
            if (excess > 0)
            {
                unmatched.Add(piece);
            }
        }

        return unmatched;
    }
}
