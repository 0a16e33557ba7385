using Kitwright.Checking.Exact;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Designs;

/// <summary>
/// The sum of directed edges. Where it is nothing at all, polygons that run once round add up to cover each point
/// equally often: patches less their frame then fill the frame exactly, without gap or overlap.
/// </summary>
/// <remarks>
/// An edge from p to q on a line counts +1 at p and −1 at q for that line; edges cancel everywhere on the line
/// exactly where all these counts are zero. So edges need not be matched one to one: one long edge may face several
/// short ones.
/// </remarks>
internal sealed class EdgeSum
{
    private readonly Dictionary<End, (int Count, PathId Place)> ends = [];

    /// <summary>A point as an end on lines of one slope; null is upright.</summary>
    private readonly record struct End(Surd? Slope, Point At);

    /// <param name="times">1 for a polygon, −1 for the frame that it must fill.</param>
    public void Add(PathId place, Shape polygon, int times)
    {
        for (var i = 0; i < polygon.Count; i++)
        {
            Point from = polygon[i],
                to = polygon.Next(i);
            var dx = to.X - from.X;
            Surd? slope = dx.IsZero ? null : (to.Y - from.Y) / dx;
            Count(new(slope, from), times, place);
            Count(new(slope, to), -times, place);
        }
    }

    private void Count(End end, int change, PathId place)
    {
        ends.TryGetValue(end, out var known);
        ends[end] = (known.Count + change, known.Place.Value.Length > 0 ? known.Place : place);
    }

    /// <summary>A point where an edge has no match, the lowest and then leftmost; null where all cancel.</summary>
    public (Point At, PathId Place)? FirstOpen()
    {
        (Point At, PathId Place)? first = null;
        foreach (var (end, (count, place)) in ends)
        {
            if (count != 0 && (first is not { } f || IsBefore(end.At, f.At)))
            {
                first = (end.At, place);
            }
        }

        return first;
    }

    private static bool IsBefore(Point p, Point q)
    {
        var byY = p.Y.CompareTo(q.Y);
        return byY < 0 || (byY == 0 && p.X < q.X);
    }
}
