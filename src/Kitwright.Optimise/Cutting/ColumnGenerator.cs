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
    private const int StepsPerColumn = 500;
    private const int StepsPerSolve = 2000;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly StripMaster master;
    private readonly StripKnapsack knapsack;
    private readonly SumsOfHeights sums;
    private readonly long scale;
    private readonly HashSet<Column> forbidden = [];
    private readonly ColumnPool pool;
    private readonly long[] duals;
    private readonly int[] timesOfWay;
    private StripKnapsack? proper;

    public ColumnGenerator(StripGrid grid, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        master = new(grid, meter);
        knapsack = new(grid);
        pool = new(grid);
        sums = new(grid.Heights);
        scale = StripKnapsack.ScaleFor(grid);
        duals = new long[grid.Pieces.Length];
        timesOfWay = new int[grid.Ways.Length];
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

    /// <summary>The basis of the last solve with those duals.</summary>
    public LinearSolution Solution() =>
        new(
            [.. duals.Select((_, row) => master.Basic(row).Column)],
            [.. duals.Select((_, row) => master.SurplusIn(row))],
            FeasibleDuals(),
            scale
        );

    public double Length => master.Length;

    /// <summary>A column of the solution of the last solve and how often it is cut; null where the row has none.</summary>
    public (Column? Column, double Times) Basic(int row) => master.Basic(row);

    public void Forbid(Column column) => forbidden.Add(column);

    public void Permit(Column column) => forbidden.Remove(column);

    /// <summary>
    /// Solves for these counts, over columns that yield no more. False where no plan below <paramref name="cutoff"/>
    /// exists, or the work is used up.
    /// </summary>
    public bool Solve(ReadOnlySpan<int> counts, long cutoff)
    {
        master.Want(counts);
        master.Allow(counts, forbidden);

        while (!meter.MustStop && master.Solve())
        {
            for (var i = 0; i < duals.Length; i++)
            {
                duals[i] = counts[i] == 0 ? 0 : (long)Math.Floor(Math.Max(0, master.Dual(i)) * scale);
            }

            knapsack.Solve(duals, counts);
            Priced = true;
            meter.Charge(StepsPerSolve + (knapsack.Cells / 4));
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

    private bool AddImproving(ReadOnlySpan<int> counts)
    {
        var added = false;
        var last = 0L;
        for (var h = 0; h < grid.Heights.Length; h++)
        {
            var value = knapsack.Value(h);
            var worth = grid.Heights[h] * scale;
            if (value > last && value - worth > worth / Tolerance)
            {
                Array.Clear(timesOfWay);
                knapsack.Cut(h, timesOfWay);
                added |= HoldsTooMany(counts) ? AddProper(h, counts) : Offer(counts);
            }

            last = value;
        }

        return added;
    }

    private bool Offer(ReadOnlySpan<int> counts)
    {
        var column = pool.Proper(timesOfWay, counts);
        meter.Charge(StepsPerColumn);
        return !forbidden.Contains(column) && Add(column);
    }

    /// <summary>
    /// The table holds each way of a piece to its count, not both together. Cropped, such a strip may be worth too little
    /// or be known, and one that is worth more would be missed.
    /// </summary>
    private bool AddProper(int height, ReadOnlySpan<int> counts)
    {
        proper ??= new(grid);
        proper.SolveProperly(height, duals, counts);
        meter.Charge(StepsPerSolve + (proper.Cells / 4));
        var worth = grid.Heights[height] * scale;
        if (proper.Value(height) - worth <= worth / Tolerance)
        {
            return false;
        }

        Array.Clear(timesOfWay);
        proper.Cut(height, timesOfWay);
        return Offer(counts);
    }

    private bool HoldsTooMany(ReadOnlySpan<int> counts)
    {
        foreach (var ways in grid.WaysOf)
        {
            if (ways.Length > 1 && timesOfWay[ways[0]] + timesOfWay[ways[1]] > counts[grid.Ways[ways[0]].Piece])
            {
                return true;
            }
        }

        return false;
    }
}
