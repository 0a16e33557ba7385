using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>What the sides of one patch enclose; they run counterclockwise and do not cross.</summary>
internal sealed class Region(IReadOnlyList<Edge> sides)
{
    private readonly Polygon straight = new([.. sides.Select(s => s.From)]);

    /// <summary>Exact: the polygon of the corners, with what each arc adds to it or takes from it.</summary>
    public Side Where(Point point)
    {
        if (sides.Any(s => s.From == point || s.Contains(point)))
        {
            return Side.On;
        }

        var arcs = sides.Where(s => s.IsArc);
        var onChord = arcs.FirstOrDefault(arc => (arc with { Center = null }).Contains(point));
        var inside = onChord.IsArc ? !onChord.Clockwise : straight.Where(point) == Side.Inside;
        foreach (var arc in arcs.Where(arc => arc != onChord && IsBetweenChordAndArc(arc, point)))
        {
            inside = !inside;
        }

        return inside ? Side.Inside : Side.Outside;
    }

    private static bool IsBetweenChordAndArc(Edge arc, Point point)
    {
        var step = point - arc.Center!.Value;
        return new Line(arc.From, arc.To).SideOf(point) == (arc.Clockwise ? 1 : -1)
            && Point.Dot(step, step) < arc.RadiusSquared;
    }
}
