using System.Collections.Immutable;
using System.Numerics;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>Column generation over sheet patterns (Gilmore and Gomory 1965): the master and the multistage knapsack, turn about.</summary>
internal sealed class SheetColumnGenerator : IDisposable
{
    private readonly SheetGrid grid;
    private readonly WorkMeter meter;
    private readonly SheetMaster master;
    private readonly long[] duals;
    private readonly long[] supplyDuals;

    public SheetColumnGenerator(SheetGrid grid, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        master = new(grid, meter);
        Pricings = [.. Plate.All(grid).Select(plate => new PlatePricing(plate, grid.IsOpen, StripTable.Of(grid.Terms, plate, meter), meter))];
        duals = new long[grid.Pieces.Length];
        supplyDuals = new long[grid.Sheets.Length];
        Scale = ScaleFor(grid);
    }

    public ImmutableArray<PlatePricing> Pricings { get; }

    /// <summary>Duals are in 1/Scale cost units.</summary>
    public long Scale { get; }

    public ImmutableArray<long> Duals => [.. duals];

    public IReadOnlyList<SheetColumn> Columns => master.Columns;

    public double Times(int column) => master.Times(column);

    public bool Add(SheetColumn column) => master.Add(column);

    /// <summary>Solves until no pattern is worth more than its sheet, or a number of rounds; false where numbers fail.</summary>
    public bool Solve(IReadOnlyList<int> wanted, IReadOnlyList<int> sheetsLeft, int mostRounds)
    {
        for (var round = 0; round < mostRounds; round++)
        {
            if (!master.Solve(wanted, sheetsLeft))
            {
                return false;
            }

            for (var i = 0; i < duals.Length; i++)
            {
                duals[i] = wanted[i] == 0 ? 0 : Whole(master.Dual(i));
            }

            for (var s = 0; s < supplyDuals.Length; s++)
            {
                supplyDuals[s] = Whole(master.DualOfSheet(s));
            }

            if (meter.MustStop || !Improve(wanted, sheetsLeft))
            {
                return true;
            }
        }

        return master.Solve(wanted, sheetsLeft);
    }

    /// <summary>The bound on the cost of everything, in cost units, from the duals of the last solve; see <see cref="SheetProof"/>.</summary>
    public long Bound()
    {
        var worth = new BigInteger[grid.Sheets.Length];
        (BigInteger Value, BigInteger Cost) worst = (1, 1);
        foreach (var pricing in Pricings)
        {
            var sheet = pricing.Plate.Sheet;
            var value = pricing.Worth(duals, grid.Counts.AsSpan());
            worth[sheet] = BigInteger.Max(worth[sheet], value);
            BigInteger cost = grid.Sheets[sheet].Cost * Scale;
            if (grid.IsOpen)
            {
                (value, var height) = pricing.Densest();
                cost *= height;
            }

            if (grid.Sheets[sheet].Count is null && value * worst.Cost > worst.Value * cost)
            {
                worst = (value, cost);
            }
        }

        BigInteger sum = 0;
        for (var i = 0; i < duals.Length; i++)
        {
            sum += (BigInteger)duals[i] * grid.Counts[i] * worst.Cost;
        }

        for (var s = 0; s < worth.Length; s++)
        {
            if (grid.Sheets[s].Count is { } count)
            {
                sum -= count * BigInteger.Max(0, (worth[s] * worst.Cost) - (grid.Sheets[s].Cost * Scale * worst.Value));
            }
        }

        var divisor = worst.Value * Scale;
        var least = sum <= 0 ? 0 : (long)((sum + divisor - 1) / divisor);
        return grid.IsOpen ? SheetAreaBound.RoundUp(grid, least) : least;
    }

    public void Dispose() => master.Dispose();

    /// <summary>Adds patterns that are worth more than their sheets; false where there are none.</summary>
    private bool Improve(IReadOnlyList<int> wanted, IReadOnlyList<int> sheetsLeft)
    {
        int[] counts = [.. wanted];
        var added = false;
        foreach (var pricing in Pricings.Where(p => sheetsLeft[p.Plate.Sheet] > 0))
        {
            var sheet = pricing.Plate.Sheet;
            if (!grid.IsOpen && !IsWorthwhile(pricing.Worth(duals, counts), sheet, grid.Sheets[sheet].Cost))
            {
                continue;
            }

            if (grid.IsOpen)
            {
                pricing.Worth(duals, counts);
            }

            foreach (var pattern in pricing.Patterns())
            {
                added |= AddIfWorthwhile(pattern);
            }

            if (!grid.IsOpen && pricing.Construct(duals, counts) is { } proper)
            {
                added |= AddIfWorthwhile(proper);
            }

            if (meter.MustStop)
            {
                return false;
            }
        }

        return added;
    }

    private bool AddIfWorthwhile(SheetPattern pattern)
    {
        var column = SheetColumn.Of(grid, grid.IsOpen ? SheetSurplus.Tight(grid, pattern) : pattern);
        var value = 0L;
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            value += duals[column.Pieces[i]] * column.Copies[i];
        }

        return IsWorthwhile(value, column.Sheet, column.Cost) && Add(column);
    }

    /// <summary>Below a millionth the gain is noise of the solver's floating point.</summary>
    private bool IsWorthwhile(long value, int sheet, long cost)
    {
        cost = (cost * Scale) + supplyDuals[sheet];
        return value - cost > cost / 1_000_000;
    }

    private long Whole(double dual) => (long)Math.Floor(Math.Clamp(dual, 0, 1e15 / Scale) * Scale);

    /// <summary>The largest power of two, at most 2^26, with which no sum of duals over a sheet overflows.</summary>
    private static long ScaleFor(SheetGrid grid)
    {
        var most = grid.Sheets.Max(sheet => grid.IsOpen ? (long)sheet.Width * grid.Pieces.Max(p => Math.Max(p.Width, p.Height)) : sheet.Area);
        var pieces = Math.Max(1, most / grid.Pieces.Min(piece => piece.Area));
        var dearest = (Int128)grid.PenaltyOf(0) * 2 * pieces;
        var scale = 1L << 26;
        while (scale > 1 && dearest * scale >= (Int128)1 << 60)
        {
            scale >>= 1;
        }

        return scale;
    }
}
