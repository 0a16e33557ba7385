using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Column generation (Gilmore and Gomory 1961, 1965): the strip master over the columns found so far, and the knapsack
/// that finds better ones, turn about until no strip is worth more than its height.
/// </summary>
internal sealed class ColumnGenerator
{
    // Below this relative overvaluation a new column is noise of the solver's floating point.
    private const long Tolerance = 1_000_000;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly StripMaster master;
    private readonly StripKnapsack knapsack;
    private readonly SumsOfHeights sums;
    private readonly long scale;
    private readonly HashSet<Column> forbidden = [];
    private readonly long[] duals;

    public ColumnGenerator(StripGrid grid, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        master = new(grid, meter);
        knapsack = new(grid);
        sums = new(grid.Heights);
        scale = StripKnapsack.ScaleFor(grid);
        duals = new long[grid.Pieces.Length];
    }

    public int Count => master.Count;
    public Column this[int i] => master[i];

    public bool Add(Column column) => master.Add(column);

    /// <summary>True once duals have been priced at least once.</summary>
    public bool Priced { get; private set; }

    /// <summary>The duals of the last solve, in 1/scale units; none negative.</summary>
    public ImmutableArray<long> Duals => [.. duals];

    public long Scale => scale;

    /// <summary>The bound for all pieces from the duals of the last solve.</summary>
    public StripBound Bound() => FarleyBound.Of(grid, knapsack, sums, Duals, scale);

    /// <summary>Those duals lowered, where need be, until no strip is worth more than its height.</summary>
    public ImmutableArray<long> FeasibleDuals() => FarleyBound.Feasible(grid, knapsack, Duals, scale);

    public double Length => master.Length;

    /// <summary>The columns of the solution of the last solve.</summary>
    public IEnumerable<(Column Column, double Times)> Solution()
    {
        for (var row = 0; row < grid.Pieces.Length; row++)
        {
            if (master.Basic(row) is ({ } column, > 1e-6) basic)
            {
                yield return (column, basic.Times);
            }
        }
    }

    public void Forbid(Column column) => forbidden.Add(column);

    public void Permit(Column column) => forbidden.Remove(column);

    /// <summary>
    /// Solves for these counts, over columns that yield no more. False where no plan below <paramref name="cutoff"/>
    /// exists, or the work is used up.
    /// </summary>
    public bool Solve(IReadOnlyList<int> wanted, long cutoff)
    {
        int[] counts = [.. wanted];
        master.Want(counts);
        master.Allow(column => column.MostTimes(counts) > 0 && (forbidden.Count == 0 || !forbidden.Contains(column)));

        while (!meter.MustStop && master.Solve())
        {
            for (var i = 0; i < duals.Length; i++)
            {
                duals[i] = counts[i] == 0 ? 0 : (long)Math.Floor(Math.Max(0, master.Dual(i)) * scale);
            }

            knapsack.Solve(duals, counts);
            Priced = true;
            meter.Charge(knapsack.Cells);
            if (LowerBound(counts) >= cutoff)
            {
                return false;
            }

            if (!AddImproving(counts))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Farley's bound for these counts from the last duals, rounded up to a sum of heights.</summary>
    public long LowerBound(ReadOnlySpan<int> counts)
    {
        var worst = (Value: (Int128)scale, Height: Int128.One);
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            if (knapsack.Value(h) * worst.Height > worst.Value * grid.Heights[h])
            {
                worst = (knapsack.Value(h), grid.Heights[h]);
            }
        }

        var sum = Int128.Zero;
        for (var i = 0; i < counts.Length; i++)
        {
            sum += (Int128)duals[i] * counts[i];
        }

        return sums.RoundUp((long)(((sum * worst.Height) + worst.Value - 1) / worst.Value));
    }

    private bool AddImproving(int[] counts)
    {
        var added = false;
        var last = 0L;
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            var value = knapsack.Value(h);
            var worth = grid.Heights[h] * scale;
            if (value > last && value - worth > worth / Tolerance)
            {
                var column = Column.Proper(grid, knapsack.Cut(h), counts);
                added |= !forbidden.Contains(column) && Add(column);
            }

            last = value;
        }

        return added;
    }
}
