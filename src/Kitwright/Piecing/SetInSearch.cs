using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// How a region is put together that no straight seam divides: taken apart, at each turn, along a line or a convex angle
/// that crosses no patch, with as few turns as there can be; sewn in the opposite order, each angle is one set-in seam.
/// </summary>
/// <remarks>
/// What lies within an angle is set into it, and nothing else may lie there however far its sides are drawn out: so the
/// checker, which folds along whole lines, can follow. Depth-first with the fewest turns first and parts of like number
/// before others; a set that failed once is not tried again, and the search ends after a stated number of looks.
/// </remarks>
internal sealed class SetInSearch
{
    /// <summary>Sets that are taken apart before the search gives up.</summary>
    private const int MostLooks = 400;

    private readonly PartingTable table;
    private readonly ulong all;
    private readonly Partings partings;
    private readonly HashSet<ulong> failed = [];
    private int looks;

    private SetInSearch(PartingTable table, ulong all, Partings partings)
    {
        this.table = table;
        this.all = all;
        this.partings = partings;
    }

    /// <summary>A set of items, single or joined from two.</summary>
    /// <param name="Items">As bits, by their place in the region.</param>
    /// <param name="On">What the part is sewn to; null for a set that is not divided here.</param>
    /// <param name="Lines">The seam: the part lies to the left of each line, and each turns left from the one before.</param>
    public sealed record Joint(ulong Items, Joint? On, Joint? Part, ImmutableArray<Line> Lines);

    /// <summary>Null where nothing was found.</summary>
    /// <param name="all">The items of the region, as bits.</param>
    /// <param name="partings">Of them all.</param>
    public static Joint? Of(PartingTable table, ulong all, Partings partings) => new SetInSearch(table, all, partings).Solve(all);

    private Joint? Solve(ulong set)
    {
        // A convex part is a unit by itself: whoever makes it finds the way, and equal ones are one unit.
        if (set != all && table.IsConvex(set))
        {
            return new(set, null, null, []);
        }

        if (failed.Contains(set) || ++looks > MostLooks)
        {
            return null;
        }

        foreach (var way in (set == all ? partings : new(table, set)).InOrder())
        {
            if (Solve(way.Part) is { } part && Solve(set & ~way.Part) is { } on)
            {
                return new(set, on, part, way.Lines);
            }
        }

        failed.Add(set);
        return null;
    }
}
