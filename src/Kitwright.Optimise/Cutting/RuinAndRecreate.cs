using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Takes some strips out of a plan, a wasteful one and others that yield the same pieces, and dives for a shorter way
/// of cutting what they yielded.
/// </summary>
/// <remarks>
/// G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt and G. Dueck, "Record breaking optimization results using the ruin
/// and recreate principle", Journal of Computational Physics 159 (2000). The random numbers have the budget's seed. A little
/// longer plans are accepted at first, to move on from where nothing is shorter; the best one is kept by the caller.
/// </remarks>
internal sealed class RuinAndRecreate(StripGrid grid, ColumnGenerator generator, DivingHeuristic dive, WorkMeter meter)
{
    private const int SmallestRuin = 4;
    private const int LargestRuin = 40;

    /// <summary>Ruins up to this are searched more thoroughly: their dives are short.</summary>
    private const int SmallRuin = 8;

    /// <summary>How much longer a plan may become at first, as a share of the gap.</summary>
    private const double Heat = 0.2;

    /// <summary>Few kinds of pieces have few plans: so many rounds a kind without a shorter one, and there is hardly another.</summary>
    private const int RoundsPerKind = 400;

    private const int FewKinds = 10;

    private readonly Random random = new(20_000 ^ meter.Seed);
    private readonly bool[] touched = new bool[grid.Pieces.Length];
    private readonly List<CutStrips> kept = [];
    private readonly List<CutStrips> taken = [];
    private readonly int[] yield = new int[grid.Pieces.Length];

    /// <summary>Goes on until it is told to be done or the work is used up; tells of every plan that it accepts.</summary>
    /// <param name="duals">Feasible duals of all pieces.</param>
    /// <param name="gap">Between the shortest plan and the bound, in units.</param>
    public void Improve(
        ImmutableArray<CutStrips> strips,
        ImmutableArray<long> duals,
        Func<bool> done,
        Func<long> gap,
        Action<ImmutableArray<CutStrips>> accepted
    )
    {
        strips = Merge(strips);
        var (began, left) = (meter.Done, Math.Max(1, meter.Left));
        var (shortest, since) = (gap(), 0);
        for (var round = 0; !done() && !meter.MustStop; round++)
        {
            if (gap() < shortest)
            {
                (shortest, since) = (gap(), round);
            }
            else if (grid.Pieces.Length <= FewKinds && round - since > RoundsPerKind * grid.Pieces.Length)
            {
                return;
            }

            // A plan of few strips would only be searched as a whole again.
            var largest = Math.Min(LargestRuin, strips.Sum(s => s.Times) - 1);
            if (largest < SmallestRuin)
            {
                return;
            }

            var size = random.Next(SmallestRuin, largest + 1);
            Ruin(strips, duals, size);
            var heat = Heat * (1 - ((double)(meter.Done - began) / left)) * random.NextDouble();
            var below = CutStrips.TotalHeight(taken) + (round % 2) + (long)(heat * gap());
            if (dive.Search(Yield(), below, discrepancies: size <= SmallRuin ? 1 : 0, depth: 3) is { } recreated)
            {
                strips = Merge(Surplus.Remove(grid, [.. kept, .. recreated]));
                accepted(strips);
            }
        }
    }

    /// <summary>Parts the strips into those that are kept and those that are taken out.</summary>
    private void Ruin(ImmutableArray<CutStrips> strips, ImmutableArray<long> duals, int size)
    {
        Array.Clear(touched);
        Span<int> left = strips.Length <= 256 ? stackalloc int[strips.Length] : new int[strips.Length];
        Span<double> weights = strips.Length <= 256 ? stackalloc double[strips.Length] : new double[strips.Length];
        for (var s = 0; s < strips.Length; s++)
        {
            left[s] = strips[s].Times;
        }

        for (var i = 0; i < size; i++)
        {
            for (var s = 0; s < strips.Length; s++)
            {
                weights[s] =
                    left[s] == 0 ? 0
                    : i == 0 ? Waste(strips[s].Pattern, duals) + 0.02
                    : Shared(strips[s].Pattern) + 0.02;
            }

            var chosen = Choose(weights);
            left[chosen]--;
            foreach (var cell in strips[chosen].Pattern.Cells)
            {
                touched[grid.Ways[cell.Way].Piece] = true;
            }
        }

        kept.Clear();
        taken.Clear();
        for (var s = 0; s < strips.Length; s++)
        {
            if (left[s] > 0)
            {
                kept.Add(strips[s] with { Times = left[s] });
            }

            if (left[s] < strips[s].Times)
            {
                taken.Add(strips[s] with { Times = strips[s].Times - left[s] });
            }
        }
    }

    /// <summary>One of them, each as likely as its weight.</summary>
    private int Choose(ReadOnlySpan<double> weights)
    {
        var sum = 0.0;
        foreach (var weight in weights)
        {
            sum += weight;
        }

        var point = random.NextDouble() * sum;
        var chosen = 0;
        for (var i = 0; i < weights.Length && point >= 0; i++)
        {
            if (weights[i] > 0)
            {
                chosen = i;
                point -= weights[i];
            }
        }

        return chosen;
    }

    /// <summary>The share of the strip's height that its pieces are not worth.</summary>
    private double Waste(StripPattern pattern, ImmutableArray<long> duals)
    {
        var worth = 0.0;
        foreach (var cell in pattern.Cells)
        {
            worth += (double)duals[grid.Ways[cell.Way].Piece] * cell.Times;
        }

        return Math.Max(0, 1 - (worth / generator.Scale / pattern.Height));
    }

    /// <summary>How many of the strip's kinds of pieces have been taken out with other strips.</summary>
    private int Shared(StripPattern pattern)
    {
        var shared = 0;
        foreach (var cell in pattern.Cells)
        {
            shared += touched[grid.Ways[cell.Way].Piece] ? 1 : 0;
        }

        return shared;
    }

    /// <summary>What the strips yielded that are taken out.</summary>
    private int[] Yield()
    {
        Array.Clear(yield);
        foreach (var (pattern, times) in taken)
        {
            foreach (var cell in pattern.Cells)
            {
                yield[grid.Ways[cell.Way].Piece] += cell.Times * times;
            }
        }

        return yield;
    }

    private static ImmutableArray<CutStrips> Merge(IEnumerable<CutStrips> strips) =>
        [.. strips.GroupBy(s => s.Pattern).Select(same => new CutStrips(same.Key, same.Sum(s => s.Times)))];
}
