using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>The ways to take a set of patches apart along a line or a convex angle that crosses none of them.</summary>
/// <param name="items">All of the region's.</param>
/// <param name="contacts">Where item i lies along item j, with i to the left.</param>
/// <param name="set">As bits, by their place in the region.</param>
internal sealed class Partings(ImmutableArray<Item> items, (Point From, Point To)[][][] contacts, ulong set)
{
    private readonly int[] members = [.. Enumerable.Range(0, items.Length).Where(i => (set >> i & 1) == 1)];

    /// <summary>One way: the part lies to the left of all lines, the rest of the set does not reach between them.</summary>
    internal readonly record struct Parting(ulong Part, ImmutableArray<Line> Lines);

    /// <summary>The fewest turns first; of these, the larger the smaller side.</summary>
    public IEnumerable<Parting> InOrder()
    {
        var seen = new HashSet<ulong>();
        return AlongLines()
            .Concat(AlongAngles())
            .Concat(Singles())
            .Where(way => seen.Add(way.Part))
            .OrderBy(way => way.Lines.Length)
            .ThenByDescending(way => Math.Min(BitOperations.PopCount(way.Part), BitOperations.PopCount(set & ~way.Part)))
            .ThenBy(way => way.Part);
    }

    private IEnumerable<Parting> AlongLines()
    {
        var seen = new HashSet<string>();
        foreach (var line in members.SelectMany(i => Edges(items[i].Shape)))
        {
            if (seen.Add(KeyOf(line)) && Within([line]) is { } part && Seam(part) is { Lines.Length: 1 } way)
            {
                yield return way;
            }
        }
    }

    private IEnumerable<Parting> AlongAngles()
    {
        var ways = members.SelectMany(i => Edges(items[i].Shape)).SelectMany(e => new[] { e, new Line(e.To, e.From) }).ToLookup(e => e.From);
        foreach (var corner in ways)
        {
            // Edges away from the corner, each direction once.
            var out_ = new List<Line>();
            foreach (var way in corner)
            {
                if (!out_.Exists(o => Point.Cross(o.Step, way.Step).IsZero && Point.Dot(o.Step, way.Step).Sign > 0))
                {
                    out_.Add(way);
                }
            }

            foreach (var first in out_)
            {
                foreach (var second in out_)
                {
                    var into = new Line(first.To, first.From);
                    if (Point.Cross(into.Step, second.Step).Sign > 0 && Within([into, second]) is { } part && Seam(part) is { Lines.Length: <= 2 } way)
                    {
                        yield return way;
                    }
                }
            }
        }
    }

    private IEnumerable<Parting> Singles()
    {
        foreach (var i in members)
        {
            if (Seam(1UL << i) is { } way && Within([.. way.Lines]) == way.Part)
            {
                yield return way;
            }
        }
    }

    /// <summary>The members to the left of all lines; null where one lies on both sides, or all or none do.</summary>
    private ulong? Within(Line[] lines)
    {
        ulong part = 0;
        foreach (var i in members)
        {
            var corners = items[i].Shape.Corners;
            if (Array.TrueForAll(lines, line => corners.All(c => line.SideOf(c) >= 0)))
            {
                part |= 1UL << i;
            }
            else if (!Array.Exists(lines, line => corners.All(c => line.SideOf(c) <= 0)) && ReachesIn(corners, lines))
            {
                return null;
            }
        }

        return part == 0 || part == set ? null : part;
    }

    /// <summary>Whether any of a convex shape lies to the left of all lines.</summary>
    private static bool ReachesIn(ImmutableArray<Point> corners, Line[] lines)
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

    /// <summary>The seam between a part and the rest of the set; null where it is no single path, or a side falls apart.</summary>
    private Parting? Seam(ulong part)
    {
        if (part == 0 || part == set || !HoldsTogether(part) || !HoldsTogether(set & ~part))
        {
            return null;
        }

        var stretches = new List<(Point, Point)>();
        foreach (var i in members.Where(i => (part >> i & 1) == 1))
        {
            foreach (var j in members.Where(j => (part >> j & 1) == 0))
            {
                stretches.AddRange(contacts[i][j]);
            }
        }

        return Contacts.Path(stretches) is { } lines && EndsAt(lines[0].From, lines[0].From - lines[0].To) && EndsAt(lines[^1].To, lines[^1].Step)
            ? new(part, [.. lines])
            : null;
    }

    /// <summary>
    /// Whether no edge runs on in the line of a seam beyond its end: folding the seam open would fold that edge's allowance
    /// away, as only a partial seam avoids.
    /// </summary>
    private bool EndsAt(Point end, Point beyond) =>
        !members
            .SelectMany(i => items[i].Shape.Corners)
            .Any(corner => Point.Cross(beyond, corner - end).IsZero && Point.Dot(beyond, corner - end).Sign > 0 && IsEdgeAlong(corner, beyond));

    private bool IsEdgeAlong(Point corner, Point step) =>
        members.SelectMany(i => Edges(items[i].Shape)).Any(e => (e.From == corner || e.To == corner) && Point.Cross(e.Step, step).IsZero);

    /// <summary>Whether each item of a set can be reached from each other over shared edges.</summary>
    private bool HoldsTogether(ulong some)
    {
        var reached = some & (~some + 1);
        var open = reached;
        while (open != 0)
        {
            var i = BitOperations.TrailingZeroCount(open);
            open &= open - 1;
            foreach (var j in members)
            {
                if ((some >> j & 1) == 1 && (reached >> j & 1) == 0 && contacts[i][j].Length > 0)
                {
                    reached |= 1UL << j;
                    open |= 1UL << j;
                }
            }
        }

        return reached == some;
    }

    private static IEnumerable<Line> Edges(Polygon shape) =>
        shape.Corners.Select((corner, i) => new Line(corner, shape.Corners[(i + 1) % shape.Corners.Length]));

    // Slope and where the line passes: equal for equal lines.
    private static string KeyOf(Line line) =>
        line.Step.X.IsZero ? $"x {line.From.X}" : $"{line.Step.Y / line.Step.X} {line.From.Y - (line.From.X * (line.Step.Y / line.Step.X))}";
}
