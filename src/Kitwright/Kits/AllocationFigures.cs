using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>What an allocation comes to; compared goal by goal.</summary>
/// <param name="Served">How many kits of each line get this fabric.</param>
/// <param name="Unmet">Cuts that no bolt gives.</param>
/// <param name="Waste">Load losses and remnants too short to keep.</param>
/// <param name="Opened">Bolts put on the table.</param>
/// <param name="Kept">The longest remnant kept of a bolt that was opened; zero where none is.</param>
public sealed record AllocationFigures(ImmutableArray<int> Served, int Unmet, Length Waste, int Opened, Length Kept)
    : IComparable<AllocationFigures>
{
    /// <summary>Below zero where this one is better.</summary>
    public int CompareTo(AllocationFigures? other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var order = Unmet.CompareTo(other.Unmet);
        order = order != 0 ? order : Waste.CompareTo(other.Waste);
        order = order != 0 ? order : Opened.CompareTo(other.Opened);
        return order != 0 ? order : other.Kept.CompareTo(Kept);
    }

    /// <summary>Recomputed from the uses; null where they break a rule of the problem.</summary>
    public static AllocationFigures? Of(BoltTicks ticks, ImmutableArray<BoltUse> uses)
    {
        var problem = ticks.Problem;
        var rest = Rest(ticks, uses);
        var served = problem.Kits.Select((_, kit) => ServedKits(ticks, uses, kit)).ToImmutableArray();
        if (rest is null || served.Contains(null))
        {
            return null;
        }

        var wasted = rest.Where(r => r < ticks.Useful).Sum();
        return new(
            [.. served.Select(s => s!.Value)],
            problem.Kits.Select((k, i) => (k.Kits - served[i]!.Value) * k.CutsPerKit).Sum(),
            Length.Ticks((ticks.Loss * uses.Length) + wasted),
            uses.Length,
            Length.Ticks(rest.Where(r => r >= ticks.Useful).DefaultIfEmpty(0).Max())
        );
    }

    /// <summary>The remnant of each use, or null where a bolt gives more than it has or is used twice.</summary>
    private static long[]? Rest(BoltTicks ticks, ImmutableArray<BoltUse> uses)
    {
        long[] rest = [.. uses.Select(u => ticks.Room[u.Bolt] - u.Cuts.Sum(c => ticks.Cuts[c.Kit][c.Set][c.Cut] * c.Times))];
        var twice = uses.Select(u => u.Bolt).Distinct().Count() < uses.Length;
        var empty = uses.Any(u => u.Cuts.Length == 0 || u.Cuts.Any(c => c.Times <= 0));
        return twice || empty || rest.Any(r => r < 0) ? null : rest;
    }

    /// <summary>Kits served, or null where a set is cut in part, mixes lots, or kits are fewer than promised or more than wanted.</summary>
    private static int? ServedKits(BoltTicks ticks, ImmutableArray<BoltUse> uses, int kit)
    {
        var sets = ticks.Cuts[kit];
        var perSet = new int[sets.Length];
        for (var set = 0; set < sets.Length; set++)
        {
            for (var lot = 0; lot < ticks.Lots; lot++)
            {
                var counts = new int[sets[set].Length];
                foreach (var cut in uses.Where(u => ticks.Lot[u.Bolt] == lot).SelectMany(u => u.Cuts))
                {
                    if (cut.Kit == kit && cut.Set == set)
                    {
                        counts[cut.Cut] += cut.Times;
                    }
                }

                if (counts.Any(c => c != counts[0]))
                {
                    return null;
                }

                perSet[set] += counts[0];
            }
        }

        var wanted = ticks.Problem.Kits[kit];
        return perSet.All(s => s == perSet[0]) && perSet[0] >= wanted.Promised && perSet[0] <= wanted.Kits ? perSet[0] : null;
    }
}
