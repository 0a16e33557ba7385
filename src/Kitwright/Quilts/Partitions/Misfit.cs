using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Partitions;

/// <summary>Turns sides that nothing matches into overlaps and gaps, each told once.</summary>
/// <remarks>
/// A straight side is cut where others cross it; along a piece, the regions to its left and right do not change, so
/// what covers either is found at its middle: patches that hold the middle inside, and patches with a side along it.
/// </remarks>
internal sealed class Misfit
{
    // A drawing with more amiss than this is told in part; the rest shows once these are mended.
    private const int MostSides = 400;
    private const int MostPieces = 4_000;
    private const int MostOverlaps = 25;

    private static readonly Surd Half = new Rational(1, 2);

    private readonly Block block;
    private readonly Telling tell;
    private readonly (Edge Edge, Reach Reach)[] straight;
    private readonly (Region Region, Reach Reach)[] regions;
    private readonly HashSet<(int, int)> told = [];
    private readonly List<Edge> gaps = [];

    private Misfit(List<Edge> edges, Block block, Telling tell)
    {
        this.block = block;
        this.tell = tell;
        straight = [.. edges.Where(e => !e.IsArc).Select(e => (e, Reach.Of(e)))];
        regions =
        [
            .. edges
                .Where(e => e.Owner != Edge.Outside)
                .GroupBy(e => e.Owner)
                .OrderBy(sides => sides.Key)
                .Select(sides => (new Region([.. sides]), sides.Select(Reach.Of).Aggregate((a, b) => a.And(b)))),
        ];
    }

    public static void Tell(List<Edge> edges, List<Edge> unmatched, Block block, Telling tell)
    {
        var alone = unmatched.Where(e => e.IsArc).ToList();
        foreach (var arc in alone.Where(e => e.Owner != Edge.Outside).Take(MostOverlaps))
        {
            tell.Patch("quilt.arc.alone", arc.Owner, arc.From, ("to", tell.Text(arc.To)));
        }

        // Beside a curve that does not fit, straight sides that lack a match say nothing new.
        if (alone.Count == 0 && unmatched.Count > 0)
        {
            new Misfit(edges, block, tell).TellStraight(unmatched);
        }
    }

    private void TellStraight(List<Edge> unmatched)
    {
        foreach (var piece in unmatched.Take(MostSides).SelectMany(Cut).Take(MostPieces).TakeWhile(_ => told.Count < MostOverlaps))
        {
            TellSides(piece);
        }

        TellGaps();
    }

    private IEnumerable<Edge> Cut(Edge side)
    {
        var reach = Reach.Of(side);
        var crossings =
            from other in straight
            where reach.Meets(other.Reach)
            let point = Crossing.Inner(side, other.Edge)
            where point is not null
            select point.Value;
        return side.SplitAt([.. crossings.Distinct()]);
    }

    private void TellSides(Edge piece)
    {
        var middle = piece.From + ((piece.To - piece.From) * Half);
        var reach = Reach.Of([middle]);
        var across = Enumerable
            .Range(0, regions.Length)
            .Where(i => regions[i].Reach.Meets(reach) && regions[i].Region.Where(middle) == Side.Inside)
            .ToList();
        var along = straight.Where(s => s.Reach.Meets(reach) && s.Edge.Contains(middle)).Select(s => s.Edge).ToLookup(piece.RunsWith, e => e.Owner);
        TellOverlap([.. across, .. along[true]], middle);
        int[] right = [.. across, .. along[false]];
        TellOverlap(right, middle);
        if (right.Length == 0)
        {
            gaps.Add(piece);
        }
    }

    private void TellOverlap(IEnumerable<int> owners, Point middle)
    {
        var patches = owners.Where(i => i != Edge.Outside).Distinct().Order().ToArray();
        if (patches.Length > 1 && told.Add((patches[0], patches[1])))
        {
            tell.Patch("quilt.overlap", patches[1], middle, ("other", block.Patches[patches[0]].Id));
        }
    }

    // A gap lies to the right of its sides; sides that follow each other bound the same gap.
    private void TellGaps()
    {
        var byEnd = gaps.ToLookup(e => e.To);
        var used = new HashSet<Edge>();
        foreach (var gap in gaps.TakeWhile(_ => !tell.IsFull).Where(used.Add))
        {
            var loop = new List<Edge> { gap };
            while (byEnd[loop[^1].From].FirstOrDefault(e => !used.Contains(e)) is { } next && next != default && used.Add(next))
            {
                loop.Add(next);
            }

            var corners = string.Join(" ", loop.Select(e => tell.Text(e.To)).Take(12));
            tell.Block("quilt.gap", gap.To, ("corners", corners));
        }
    }
}
