using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Kits;

/// <summary>A bolt problem in whole ticks, as the methods work on it.</summary>
public sealed class BoltTicks
{
    /// <exception cref="ArgumentException">A length is not a whole number of ticks.</exception>
    public BoltTicks(BoltProblem problem)
    {
        Problem = problem;
        var loss = Ticks(problem.LoadLoss);
        Loss = loss;
        Useful = Ticks(problem.UsefulRemnant);
        Room = [.. problem.Bolts.Select(b => Math.Max(0, Ticks(b.OnHand) - loss))];
        string[] lots = [.. problem.Bolts.Select(b => b.Lot).Distinct(StringComparer.Ordinal)];
        Lot = [.. problem.Bolts.Select(b => Array.IndexOf(lots, b.Lot))];
        Lots = lots.Length;
        Cuts = [.. problem.Kits.Select(k => k.Sets.Select(s => s.Cuts.Select(c => Ticks(c.Length)).ToImmutableArray()).ToImmutableArray())];
    }

    public BoltProblem Problem { get; }

    public long Loss { get; }

    public long Useful { get; }

    /// <summary>What each bolt gives once it is squared.</summary>
    public ImmutableArray<long> Room { get; }

    /// <summary>Each bolt's lot, from 0.</summary>
    public ImmutableArray<int> Lot { get; }

    public int Lots { get; }

    /// <summary>Lengths by kit, set and cut.</summary>
    public ImmutableArray<ImmutableArray<ImmutableArray<long>>> Cuts { get; }

    private static long Ticks(Length length) =>
        length.TryTicks(out var ticks) ? ticks : throw new ArgumentException($"{length} is no whole number of ticks.");
}
