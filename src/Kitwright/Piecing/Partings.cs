using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>The ways to take a set of patches apart along a line or a convex angle that crosses none of them.</summary>
/// <param name="table">What holds for the region whatever the set.</param>
/// <param name="set">As bits, by their place in the region.</param>
internal sealed class Partings(PartingTable table, ulong set)
{
    // Many lines and angles part off the same items.
    private readonly Dictionary<ulong, Parting?> known = [];
    private Parting[]? inOrder;

    /// <summary>One way: the part lies to the left of all lines, the rest of the set does not reach between them.</summary>
    internal readonly record struct Parting(ulong Part, ImmutableArray<Line> Lines);

    /// <summary>The fewest turns first; of these, the larger the smaller side.</summary>
    public IReadOnlyList<Parting> InOrder() => inOrder ??= Sorted();

    private Parting[] Sorted()
    {
        var seen = new HashSet<ulong>();
        return
        [
            .. AlongLines()
                .Concat(AlongAngles())
                .Concat(Singles())
                .Where(way => seen.Add(way.Part))
                .OrderBy(way => way.Lines.Length)
                .ThenByDescending(way => Math.Min(BitOperations.PopCount(way.Part), BitOperations.PopCount(set & ~way.Part)))
                .ThenBy(way => way.Part),
        ];
    }

    private IEnumerable<Parting> AlongLines() =>
        from side in table.Sides
        where (side.Edges & set) != 0 && (side.Across & set) == 0
        let way = Seam(side.Left & set)
        where way is { Lines.Length: 1 }
        select way.Value;

    private IEnumerable<Parting> AlongAngles() =>
        from angle in table.Angles
        where (angle.FirstEdges & set) != 0 && (angle.SecondEdges & set) != 0 && (angle.ReachedIn & set) == 0
        let way = Seam(angle.Within & set)
        where way is { Lines.Length: <= 2 }
        select way.Value;

    private IEnumerable<Parting> Singles()
    {
        for (var rest = set; rest != 0; rest &= rest - 1)
        {
            var one = rest & (~rest + 1);
            if (Seam(one) is { } way && table.Within(way.Lines, set) == one)
            {
                yield return way;
            }
        }
    }

    /// <summary>The seam between a part and the rest of the set; null where it is no single path, or a side falls apart.</summary>
    private Parting? Seam(ulong part)
    {
        if (!known.TryGetValue(part, out var way))
        {
            known.Add(part, way = Along(part));
        }

        return way;
    }

    private Parting? Along(ulong part)
    {
        if (part == 0 || part == set || !table.HoldsTogether(part) || !table.HoldsTogether(set & ~part))
        {
            return null;
        }

        var stretches = new List<(Point, Point)>();
        for (var ones = part; ones != 0; ones &= ones - 1)
        {
            var i = BitOperations.TrailingZeroCount(ones);
            for (var others = table.Neighbors(i) & set & ~part; others != 0; others &= others - 1)
            {
                stretches.AddRange(table.Contacts(i, BitOperations.TrailingZeroCount(others)));
            }
        }

        return Contacts.Path(stretches) is { } lines
            && (table.RunningOn(lines[0].From, lines[0].From - lines[0].To) & set) == 0
            && (table.RunningOn(lines[^1].To, lines[^1].Step) & set) == 0
            ? new(part, [.. lines])
            : null;
    }
}
