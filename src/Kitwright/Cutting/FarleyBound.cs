using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>
/// The bound that any duals give: however bad they are, dividing by the worst overvaluation of a strip makes them
/// feasible for the dual of the strip-cutting linear program.
/// </summary>
/// <remarks>A. A. Farley, Operations Research 38(5), 1990; the conventions are those of <see cref="Plans.Proof"/>.</remarks>
public static class FarleyBound
{
    /// <summary>The bound of these duals; <paramref name="knapsack"/> is left solved for them.</summary>
    public static StripBound Of(
        StripGrid grid,
        StripKnapsack knapsack,
        SumsOfHeights sums,
        ImmutableArray<long> duals,
        long scale
    )
    {
        knapsack.Solve(duals.AsSpan(), grid.Counts.AsSpan());
        var (value, height) = WorstOvervaluation(grid, knapsack, scale);
        return new(sums.RoundUp(CeilingQuotient(grid.Worth(duals.AsSpan()) * height, value)), scale, duals);
    }

    /// <summary>The duals scaled so that the most overvalued strip is worth just its height, and none is worth more.</summary>
    public static ImmutableArray<long> Feasible(StripGrid grid, StripKnapsack knapsack, ImmutableArray<long> duals, long scale)
    {
        knapsack.Solve(duals.AsSpan(), grid.Counts.AsSpan());
        var (value, height) = (0L, 1L);
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            if ((Int128)knapsack.Value(h) * height > (Int128)value * grid.Heights[h])
            {
                (value, height) = (knapsack.Value(h), grid.Heights[h]);
            }
        }

        var worth = (Int128)height * scale;
        return value == 0 ? duals : [.. duals.Select(dual => (long)(dual * worth / value))];
    }

    /// <summary>ρ · scale as a fraction value / height; scale / 1 where no strip is overvalued.</summary>
    private static (Int128 Value, Int128 Height) WorstOvervaluation(StripGrid grid, StripKnapsack knapsack, long scale)
    {
        var worst = (Value: (Int128)scale, Height: Int128.One);
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            if (knapsack.Value(h) * worst.Height > worst.Value * grid.Heights[h])
            {
                worst = (knapsack.Value(h), grid.Heights[h]);
            }
        }

        return worst;
    }

    private static long CeilingQuotient(Int128 dividend, Int128 divisor) => (long)((dividend + divisor - 1) / divisor);
}
