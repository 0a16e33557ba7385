using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>Turns sides that nothing matches into overlaps and gaps, each told once.</summary>
internal static class Misfit
{
    // A drawing with more sides amiss than this is told in part; the rest shows once these are mended.
    private const int MostTold = 200;

    public static void Tell(List<Edge> edges, List<Edge> unmatched, Block block, Telling tell)
    {
        if (unmatched.Count == 0)
        {
            return;
        }

        var alone = unmatched.Where(e => e.IsArc).ToList();
        foreach (var arc in alone.Where(e => e.Owner != Edge.Outside).TakeWhile(_ => !tell.IsFull))
        {
            tell.Patch("quilt.arc.alone", arc.Owner, arc.From, ("to", tell.Text(arc.To)));
        }

        // Beside a curve that does not fit, straight sides that lack a match say nothing new.
        if (alone.Count == 0)
        {
            TellStraight(edges, unmatched, block, tell);
        }
    }

    // Cut at all crossings too, so that each piece has one region along the whole of either side.
    private static void TellStraight(List<Edge> edges, List<Edge> unmatched, Block block, Telling tell)
    {
        var net = EdgeNet.Of(edges, Crossings(edges, unmatched));
        var owners = net.Pieces.ToLookup(e => e.Unowned, e => e.Owner);
        var shapes = edges.Where(e => e.Owner != Edge.Outside).GroupBy(e => e.Owner).OrderBy(g => g.Key).Select(g => new Region([.. g])).ToArray();
        var pairs = new HashSet<(int, int)>();
        var gaps = new List<Edge>();
        foreach (var piece in net.Unmatched().Take(MostTold).TakeWhile(_ => !tell.IsFull))
        {
            var middle = piece.From + ((piece.To - piece.From) * new Surd(new Measure.Rational(1, 2)));
            var across = Enumerable.Range(0, shapes.Length).Where(i => shapes[i].Where(middle) == Side.Inside).ToList();
            var left = across.Concat(owners[piece.Unowned]).Where(i => i != Edge.Outside).Distinct().Order().ToList();
            var right = across.Concat(owners[piece.Reversed.Unowned]).Distinct().Order().ToList();
            if (right.Count == 0)
            {
                gaps.Add(piece);
            }

            foreach (var side in new[] { left, right })
            {
                side.Remove(Edge.Outside);
                if (side.Count > 1 && pairs.Add((side[0], side[1])))
                {
                    tell.Patch("quilt.overlap", side[1], middle, ("other", block.Patches[side[0]].Id));
                }
            }
        }

        TellGaps(gaps, tell);
    }

    private static IEnumerable<Point> Crossings(List<Edge> edges, List<Edge> unmatched)
    {
        var straight = edges.Where(e => !e.IsArc).Select(e => (Edge: e, Box: Box.Of(e))).ToArray();
        foreach (var edge in unmatched.Take(MostTold))
        {
            var box = Box.Of(edge);
            foreach (var other in straight)
            {
                if (box.IsNear(other.Box) && Crossing.Inner(edge, other.Edge) is { } point)
                {
                    yield return point;
                }
            }
        }
    }

    /// <summary>Bounds in doubles, widened: only what is far apart is told from them.</summary>
    private readonly record struct Box(double Left, double Bottom, double Right, double Top)
    {
        private const double Near = 1e-6;

        public static Box Of(Edge edge)
        {
            double x = edge.From.X.ToDouble(),
                y = edge.From.Y.ToDouble(),
                toX = edge.To.X.ToDouble(),
                toY = edge.To.Y.ToDouble();
            return new(Math.Min(x, toX) - Near, Math.Min(y, toY) - Near, Math.Max(x, toX) + Near, Math.Max(y, toY) + Near);
        }

        public bool IsNear(Box other) =>
            Left <= other.Right && other.Left <= Right && Bottom <= other.Top && other.Bottom <= Top;
    }

    // A gap lies to the right of its sides; sides that follow each other bound the same gap.
    private static void TellGaps(List<Edge> gaps, Telling tell)
    {
        var left = gaps.ToList();
        while (left.Count > 0 && !tell.IsFull)
        {
            var loop = new List<Edge> { left[0] };
            left.RemoveAt(0);
            while (left.FindIndex(e => e.To == loop[^1].From) is var next and >= 0)
            {
                loop.Add(left[next]);
                left.RemoveAt(next);
            }

            var corners = string.Join(" ", loop.Select(e => tell.Text(e.To)).Take(12));
            tell.Block("quilt.gap", loop[0].To, ("corners", corners));
        }
    }
}
