using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// What a search for set-in seams asks of a region again and again, worked out once: which items lie on which side of
/// each line along an edge, what reaches into each angle of two edges, and what touches what. Items are bits.
/// </summary>
internal sealed class PartingTable
{
    private readonly ImmutableArray<Item> items;
    private readonly Point[] places;
    private readonly int[][] corners;
    private readonly (Point From, Point To)[][][] contacts;
    private readonly ulong[] neighbors;
    private readonly Dictionary<(Point End, Point Beyond), ulong> runningOn = [];
    private readonly Dictionary<(bool Upright, Surd Slope, Surd At), Side> sides = [];
    private readonly List<Angle> angles = [];
    private readonly Dictionary<ulong, bool> convex = [];

    /// <summary>Items of a region, as bits.</summary>
    public const int MostItems = 64;

    /// <summary>A line along edges, by its two sides.</summary>
    /// <param name="Edges">Items that have an edge on it.</param>
    /// <param name="Left">Items that lie to its left, edges on it included.</param>
    /// <param name="CornersLeft">By item, its corners to the left of the line and not on it, as bits; the other likewise.</param>
    internal sealed record Side(Line Line, ulong Edges, ulong Left, ulong Right, ulong All, ulong[] CornersLeft, ulong[] CornersRight)
    {
        /// <summary>Items on both sides.</summary>
        public ulong Across => All & ~Left & ~Right;
    }

    /// <summary>An angle of two edges at a corner, less than half a turn.</summary>
    /// <param name="FirstEdges">Items with an edge along its first side; the other likewise.</param>
    /// <param name="Within">Items that lie within it.</param>
    /// <param name="ReachedIn">Items of which a part but not all lies within.</param>
    internal sealed record Angle(ulong FirstEdges, ulong SecondEdges, ulong Within, ulong ReachedIn);

    private readonly record struct Way(Line Line, ulong Owners);

    private const int MostCorners = 64;

    public PartingTable(Region region)
    {
        items = region.Items;
        // Neighbors share their corners: which side each place lies on is worked out once.
        var numbers = new Dictionary<Point, int>();
        corners = [.. items.Select(item => item.Shape.Corners.Select(NumberOf).ToArray())];
        places = [.. numbers.Keys];
        contacts = ContactsOf(items);
        neighbors = [.. contacts.Select(row => Bits(row.Select(shared => shared.Length > 0)))];
        foreach (var (line, owner) in items.SelectMany((item, i) => Edges(item.Shape).Select(edge => (edge, 1UL << i))))
        {
            var key = KeyOf(line);
            sides[key] = sides.TryGetValue(key, out var known) ? known with { Edges = known.Edges | owner } : SideOf(line, owner);
        }

        foreach (var corner in items.SelectMany((item, i) => Edges(item.Shape).SelectMany(e => new[] { (Edge: e, Owner: 1UL << i), (Edge: new Line(e.To, e.From), Owner: 1UL << i) })).GroupBy(x => x.Edge.From))
        {
            AddAngles(Ways(corner));
        }

        int NumberOf(Point place)
        {
            if (!numbers.TryGetValue(place, out var number))
            {
                numbers.Add(place, number = numbers.Count);
            }

            return number;
        }
    }

    private static (Point From, Point To)[][][] ContactsOf(ImmutableArray<Item> items)
    {
        var found = Array.ConvertAll(new int[items.Length], _ => new (Point From, Point To)[items.Length][]);
        for (var i = 0; i < items.Length; i++)
        {
            found[i][i] = [];
            for (var j = i + 1; j < items.Length; j++)
            {
                found[i][j] = Piecing.Contacts.Between(items[i].Shape, items[j].Shape);
                found[j][i] = Array.ConvertAll(found[i][j], shared => (shared.To, shared.From));
            }
        }

        return found;
    }

    public IEnumerable<Side> Sides => sides.Values;

    public IReadOnlyList<Angle> Angles => angles;

    public ulong Neighbors(int item) => neighbors[item];

    /// <summary>Where item i lies along item j, with i to the left.</summary>
    public (Point From, Point To)[] Contacts(int i, int j) => contacts[i][j];

    /// <summary>Where two sets lie along one another, with the first to the left.</summary>
    public IEnumerable<(Point From, Point To)> Stretches(ulong one, ulong other) =>
        from i in Indices(one)
        from j in Indices(neighbors[i] & other)
        from stretch in contacts[i][j]
        select stretch;

    /// <summary>The one straight seam between two sets, with the first to its left; null where there is no such seam.</summary>
    public Line? LineBetween(ulong one, ulong other) =>
        Piecing.Contacts.Path([.. Stretches(one, other)]) is [var line]
        && ((RunningOn(line.From, line.From - line.To) | RunningOn(line.To, line.Step)) & (one | other)) == 0
            ? line
            : null;

    /// <summary>A single item counts as convex, whatever its shape: whoever makes it says whether it can be cut.</summary>
    public bool IsConvex(ulong set)
    {
        if (BitOperations.PopCount(set) == 1)
        {
            return true;
        }

        if (!convex.TryGetValue(set, out var known))
        {
            var region = new Region(items).Part(set);
            convex.Add(set, known = Hull.Of(region).TwiceSignedArea == region.TwiceArea);
        }

        return known;
    }

    /// <summary>Whether each item of a set can be reached from each other over shared edges.</summary>
    public bool HoldsTogether(ulong some)
    {
        var reached = some & (~some + 1);
        var open = reached;
        while (open != 0)
        {
            var next = neighbors[BitOperations.TrailingZeroCount(open)] & some & ~reached;
            open = (open & (open - 1)) | next;
            reached |= next;
        }

        return reached == some;
    }

    /// <summary>The members to the left of all lines; null where one lies on both sides, or all or none do.</summary>
    public ulong? Within(ImmutableArray<Line> lines, ulong set)
    {
        var known = lines.Select(line => sides.TryGetValue(KeyOf(line), out var side) ? Facing(side, line) : SideOf(line, 0)).ToArray();
        var part = known.Aggregate(set, (some, side) => some & side.Left);
        var beyond = known.Aggregate(0UL, (some, side) => some | side.Right);
        var unsure = set & ~part & ~beyond;
        return part == 0 || part == set || Indices(unsure).Any(i => ReachesIn(items[i].Shape.Corners, lines)) ? null : part;
    }

    /// <summary>
    /// Items with an edge that runs on in the line of a seam beyond its end: folding the seam open would fold that edge's
    /// allowance away, as only a partial seam avoids.
    /// </summary>
    public ulong RunningOn(Point end, Point beyond)
    {
        if (!runningOn.TryGetValue((end, beyond), out var found))
        {
            var on = sides.TryGetValue(KeyOf(new(end, end + beyond)), out var side) ? side.Edges : 0;
            found = Indices(on).Where(i => Edges(items[i].Shape).Any(e => Point.Cross(e.Step, beyond).IsZero && (IsBeyond(e.From) || IsBeyond(e.To)))).Aggregate(0UL, (some, i) => some | (1UL << i));
            runningOn.Add((end, beyond), found);
        }

        return found;

        bool IsBeyond(Point corner) => Point.Cross(beyond, corner - end).IsZero && Point.Dot(beyond, corner - end).Sign > 0;
    }

    /// <summary>The ways along edges from one corner, each direction once.</summary>
    private static List<Way> Ways(IEnumerable<(Line Edge, ulong Owner)> corner)
    {
        var ways = new List<Way>();
        foreach (var (edge, owner) in corner)
        {
            var same = ways.FindIndex(w => Point.Cross(w.Line.Step, edge.Step).IsZero && Point.Dot(w.Line.Step, edge.Step).Sign > 0);
            if (same < 0)
            {
                ways.Add(new(edge, owner));
            }
            else
            {
                ways[same] = ways[same] with { Owners = ways[same].Owners | owner };
            }
        }

        return ways;
    }

    private void AddAngles(List<Way> ways)
    {
        Side[] along = [.. ways.Select(way => Facing(sides[KeyOf(way.Line)], way.Line))];
        for (var i = 0; i < along.Length; i++)
        {
            var into = new Line(ways[i].Line.To, ways[i].Line.From);
            var one = Facing(along[i], into);
            for (var j = 0; j < along.Length; j++)
            {
                var other = along[j];
                if (Point.Cross(into.Step, ways[j].Line.Step).Sign <= 0)
                {
                    continue;
                }

                var within = one.Left & other.Left;
                var unsure = one.All & ~within & ~one.Right & ~other.Right;
                Line[] lines = [into, ways[j].Line];
                // A corner to the left of both lines settles it, as a rule.
                var reached = Indices(unsure).Where(k => (one.CornersLeft[k] & other.CornersLeft[k]) != 0 || ReachesIn(items[k].Shape.Corners, lines)).Aggregate(0UL, (some, k) => some | (1UL << k));
                angles.Add(new(ways[i].Owners, ways[j].Owners, within, reached));
            }
        }
    }

    /// <summary>The same line, seen along another direction.</summary>
    private static Side Facing(Side side, Line line) =>
        Point.Dot(side.Line.Step, line.Step).Sign > 0 ? side : side with { Line = line, Left = side.Right, Right = side.Left, CornersLeft = side.CornersRight, CornersRight = side.CornersLeft };

    private Side SideOf(Line line, ulong owner)
    {
        ulong left = 0,
            right = 0;
        var cornersLeft = new ulong[items.Length];
        var cornersRight = new ulong[items.Length];
        var sideOf = Array.ConvertAll(places, line.SideOf);
        for (var i = 0; i < items.Length; i++)
        {
            foreach (var (corner, place) in corners[i].Index())
            {
                var at = sideOf[place];
                // Corners beyond these are looked at one by one.
                cornersLeft[i] |= at > 0 && corner < MostCorners ? 1UL << corner : 0;
                cornersRight[i] |= at < 0 && corner < MostCorners ? 1UL << corner : 0;
                left |= at > 0 ? 1UL << i : 0;
                right |= at < 0 ? 1UL << i : 0;
            }
        }

        // So far what reaches beyond the line on either side.
        var all = Bits(items.Select(_ => true));
        return new(line, owner, all & ~right, all & ~left, all, cornersLeft, cornersRight);
    }

    /// <summary>Whether any of a convex shape lies to the left of all lines.</summary>
    private static bool ReachesIn(ImmutableArray<Point> corners, IEnumerable<Line> lines)
    {
        IReadOnlyList<Point> rest = corners;
        foreach (var line in lines)
        {
            var kept = new List<Point>();
            for (var i = 0; i < rest.Count; i++)
            {
                Point p = rest[i],
                    q = rest[(i + 1) % rest.Count];
                int sideOfP = line.SideOf(p),
                    sideOfQ = line.SideOf(q);
                if (sideOfP >= 0)
                {
                    kept.Add(p);
                }

                if (sideOfP * sideOfQ < 0)
                {
                    Surd atP = Point.Cross(line.Step, p - line.From),
                        atQ = Point.Cross(line.Step, q - line.From);
                    kept.Add(p + ((q - p) * (atP / (atP - atQ))));
                }
            }

            rest = kept;
        }

        return rest.Count > 2 && rest.Skip(2).Any(corner => !Point.Cross(rest[1] - rest[0], corner - rest[0]).IsZero);
    }

    private static IEnumerable<int> Indices(ulong some)
    {
        for (; some != 0; some &= some - 1)
        {
            yield return BitOperations.TrailingZeroCount(some);
        }
    }

    private static ulong Bits(IEnumerable<bool> flags) => flags.Select((flag, i) => flag ? 1UL << i : 0).Aggregate(0UL, (some, bit) => some | bit);

    private static IEnumerable<Line> Edges(Polygon shape) =>
        shape.Corners.Select((corner, i) => new Line(corner, shape.Corners[(i + 1) % shape.Corners.Length]));

    // Slope and where the line passes: equal for equal lines.
    private static (bool Upright, Surd Slope, Surd At) KeyOf(Line line)
    {
        var step = line.Step;
        if (step.X.IsZero)
        {
            return (true, Surd.Zero, line.From.X);
        }

        var slope = step.Y.IsZero ? Surd.Zero : step.Y / step.X;
        return (false, slope, slope.IsZero ? line.From.Y : line.From.Y - (line.From.X * slope));
    }
}
