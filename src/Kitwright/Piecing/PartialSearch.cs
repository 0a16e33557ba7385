using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// How a region is put together whose patches whirl round one another: one part is sewn on along the beginning of its
/// side only, the others follow by straight seams, each across the whole side of what is there, and the first seam is
/// closed at the end.
/// </summary>
/// <remarks>
/// The first part fills an angle of two seams. One of them runs on beyond the corner, along what is under the first
/// part and what lies beside it: a later part is sewn across both. The other one is the partial seam. What is left when
/// the first part is lifted off is taken apart from its end, each time along a line that crosses nothing.
/// </remarks>
internal sealed class PartialSearch
{
    /// <summary>Sets that are taken apart before the search gives up.</summary>
    private const int MostLooks = 400;

    private readonly PartingTable table;
    private readonly ulong first;
    private readonly Line seam;
    private readonly HashSet<ulong> failed = [];
    private int looks;

    private PartialSearch(PartingTable table, ulong first, Line seam)
    {
        this.table = table;
        this.first = first;
        this.seam = seam;
    }

    /// <summary>Sets of items as bits, by their place in the region.</summary>
    /// <param name="Base">What the first part is sewn to.</param>
    /// <param name="First">Sewn on in part.</param>
    /// <param name="Line">The whole seam between the first part and the others, from the end that is sewn at once.</param>
    /// <param name="Stop">Half way along the base.</param>
    /// <param name="Round">What follows, in order, each to the left of its seam.</param>
    public sealed record Way(ulong Base, ulong First, Line Line, Point Stop, ImmutableArray<(ulong Part, Line Line)> Round);

    /// <summary>Null where nothing was found.</summary>
    public static Way? Of(PartingTable table, ulong all, IEnumerable<Partings.Parting> partings)
    {
        foreach (var parting in partings.Where(p => p.Lines.Length == 2))
        {
            Line[] sides = [parting.Lines[0].Reversed, parting.Lines[1]];
            foreach (var (seam, other) in new[] { (sides[1], sides[0]), (sides[0], sides[1]) })
            {
                // The other side of the angle runs on beyond its corner, or nothing is sewn across both.
                if ((table.RunningOn(other.From, other.From - other.To) & all & ~parting.Part) != 0 && table.IsConvex(parting.Part) && new PartialSearch(table, parting.Part, seam).Solve(all & ~parting.Part) is { } way)
                {
                    return way;
                }
            }
        }

        return null;
    }

    private Way? Solve(ulong rest)
    {
        if (failed.Contains(rest) || ++looks > MostLooks)
        {
            return null;
        }

        if (TouchesOnlyAlongSeam(rest) && Start(rest) is { } way && table.IsConvex(rest))
        {
            return way with { Base = rest };
        }

        foreach (var part in Halves(rest).Distinct())
        {
            var others = rest & ~part;
            var along = TouchesOnlyAlongSeam(part) ? others : others | first;
            if (table.LineBetween(part, along) is { } line && table.IsConvex(part) && Solve(others) is { } found)
            {
                return found with { Round = found.Round.Add((part, line)) };
            }
        }

        failed.Add(rest);
        return null;
    }

    /// <summary>The base reaches from the corner part of the way along the seam.</summary>
    private Way? Start(ulong rest)
    {
        // The first part's edge runs on beyond the base: that stretch is what stays loose.
        if (Contacts.Path([.. table.Stretches(first, rest)]) is not [var side])
        {
            return null;
        }

        var end = side.From == seam.From ? side.To : side.To == seam.From ? side.From : (Point?)null;
        return end is { } to && Point.Dot(seam.Step, seam.To - to).Sign > 0
            ? new(0, first, seam, seam.From + ((to - seam.From) * new Surd(new Measure.Rational(1, 2))), [])
            : null;
    }

    private bool TouchesOnlyAlongSeam(ulong some) =>
        table.Stretches(first, some).All(s => seam.SideOf(s.From) == 0 && seam.SideOf(s.To) == 0);

    /// <summary>What lies on one side of a line along edges that crosses nothing of the set.</summary>
    private IEnumerable<ulong> Halves(ulong set) =>
        table
            .Sides.Where(side => (side.Edges & set) != 0 && (side.Across & set) == 0)
            .SelectMany(side => new[] { side.Left & set, side.Right & set })
            .Where(part => part != 0 && part != set)
            .OrderBy(BitOperations.PopCount)
            .ThenBy(part => part);
}
