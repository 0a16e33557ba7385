using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>What can be wrong with one patch by itself.</summary>
internal static class PatchShape
{
    /// <summary>
    /// The patch's sides, counterclockwise; null where it is no patch, with the rule it breaks and the corner or
    /// place where it breaks it.
    /// </summary>
    public static Edge[]? Trace(BlockPatch patch, int owner, out string rule, out Point at)
    {
        var edges = Sides(patch, owner, out rule, out at);
        if (edges is null || HasSpike(edges, out rule, out at) || CrossesItself(edges, out rule, out at))
        {
            return null;
        }

        // Half a square thousandth of a millimeter could not be cut; for straight sides the sign is exact.
        var area = SignedArea(patch, edges);
        if (area == 0)
        {
            (rule, at) = ("quilt.area", edges[0].From);
            return null;
        }

        return area > 0 ? edges : [.. edges.Reverse().Select(e => e.Reversed)];
    }

    private static Edge[]? Sides(BlockPatch patch, int owner, out string rule, out Point at)
    {
        (rule, at) = ("", default);
        var corners = patch.Corners;
        if (corners.Length < (patch.Arcs.IsEmpty ? 3 : 2))
        {
            (rule, at) = ("quilt.corners.few", corners[0]);
            return null;
        }

        var edges = new Edge[corners.Length];
        for (var i = 0; i < corners.Length; i++)
        {
            edges[i] = new(corners[i], corners[(i + 1) % corners.Length], null, false, owner);
            if (edges[i].From == edges[i].To)
            {
                (rule, at) = ("quilt.corner.twice", corners[i]);
                return null;
            }
        }

        foreach (var arc in patch.Arcs)
        {
            if (arc.Edge >= edges.Length || edges[arc.Edge].IsArc || !IsRound(edges[arc.Edge], arc.Center))
            {
                (rule, at) = ("quilt.arc", arc.Edge < edges.Length ? edges[arc.Edge].From : corners[0]);
                return null;
            }

            edges[arc.Edge] = edges[arc.Edge] with { Center = arc.Center, Clockwise = arc.Clockwise };
        }

        return edges;
    }

    private static bool IsRound(Edge edge, Point center)
    {
        Point from = edge.From - center,
            to = edge.To - center;
        return Point.Dot(from, from) == Point.Dot(to, to);
    }

    // Two neighboring straight sides that run back over each other.
    private static bool HasSpike(Edge[] edges, out string rule, out Point at)
    {
        for (var i = 0; i < edges.Length; i++)
        {
            Edge edge = edges[i],
                next = edges[(i + 1) % edges.Length];
            Point step = edge.To - edge.From,
                onward = next.To - next.From;
            if (!edge.IsArc && !next.IsArc && Point.Cross(step, onward).IsZero && Point.Dot(step, onward).Sign < 0)
            {
                (rule, at) = ("quilt.spike", edge.To);
                return true;
            }
        }

        (rule, at) = ("", default);
        return false;
    }

    private static bool CrossesItself(Edge[] edges, out string rule, out Point at)
    {
        for (var i = 0; i < edges.Length; i++)
        {
            for (var j = i + 1; j < edges.Length; j++)
            {
                var point = edges[i].From == edges[j].From ? edges[i].From : Crossing.Of(edges[i], edges[j]);
                if (point is not null)
                {
                    (rule, at) = ("quilt.crossing", point.Value);
                    return true;
                }
            }
        }

        (rule, at) = ("", default);
        return false;
    }

    private static double SignedArea(BlockPatch patch, Edge[] edges)
    {
        var straight = new Polygon(patch.Corners).TwiceSignedArea;
        if (patch.Arcs.IsEmpty)
        {
            return straight.Sign;
        }

        var area = straight.ToDouble() / 2;
        foreach (var edge in edges)
        {
            if (edge.Center is { } center)
            {
                area += SegmentArea(edge, center);
            }
        }

        return Math.Abs(area) < 1e-9 ? 0 : area;
    }

    // Signed area between an arc and its chord; positive where the arc bulges to the right of the chord, outward.
    private static double SegmentArea(Edge edge, Point center)
    {
        Point from = edge.From - center,
            to = edge.To - center;
        var cross = Point.Cross(from, to).ToDouble();
        var angle = Math.Atan2(cross, Point.Dot(from, to).ToDouble());
        if (!edge.Clockwise && angle <= 0)
        {
            angle += 2 * Math.PI;
        }
        else if (edge.Clockwise && angle >= 0)
        {
            angle -= 2 * Math.PI;
        }

        return ((Point.Dot(from, from).ToDouble() * angle) - cross) / 2;
    }
}
