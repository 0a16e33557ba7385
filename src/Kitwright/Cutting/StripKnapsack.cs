using System.Collections.Immutable;
using System.Numerics;

namespace Kitwright.Cutting;

/// <summary>
/// The most valuable strip of every candidate height, by the dynamic program for the bounded knapsack: ways are taken
/// in by height, so one pass serves all heights. Each way is held to the piece's count.
/// </summary>
/// <remarks>
/// P. C. Gilmore and R. E. Gomory, "Multistage cutting stock problems of two and more dimensions", Operations Research
/// 13 (1965); copies by binary splitting. Values are whole numbers; the sum over one strip must stay below 2^62, which
/// <see cref="ScaleFor"/> sees to. Buffers are kept between calls: one object serves one thread.
/// </remarks>
public sealed class StripKnapsack
{
    private readonly StripGrid grid;
    private readonly int capacity;
    private readonly ImmutableArray<Item> items;
    private readonly int[] firstItemAbove;
    private readonly long[] best;
    private readonly ulong[] taken;
    private readonly long[] valueOfHeight;
    private readonly int wordsPerItem;

    public StripKnapsack(StripGrid grid)
    {
        this.grid = grid;
        var divisor = WidthDivisor(grid);
        capacity = grid.Width / divisor;
        items = [.. grid.Ways.SelectMany((way, index) => ItemsOf(grid, way, index, divisor))];
        firstItemAbove = [.. grid.Heights.Select(height => items.Count(item => grid.Ways[item.Way].Height <= height))];
        best = new long[capacity + 1];
        wordsPerItem = (capacity >> 6) + 1;
        taken = new ulong[items.Length * (long)wordsPerItem];
        valueOfHeight = new long[grid.Heights.Length];
    }

    /// <summary>Table cells that one <see cref="Solve"/> goes through: the measure of its time and memory.</summary>
    public static long CellsOf(StripGrid grid)
    {
        var divisor = WidthDivisor(grid);
        return grid.Ways.Sum(way => (long)ItemsOf(grid, way, 0, divisor).Count()) * ((grid.Width / divisor) + 1);
    }

    public long Cells => items.Length * (long)(capacity + 1);

    /// <summary>The largest power of two, at most 2^26, with which duals no larger than a strip cannot overflow.</summary>
    public static long ScaleFor(StripGrid grid)
    {
        if (grid.Ways.IsEmpty)
        {
            return 1;
        }

        var most = (Int128)grid.Heights[^1] * (grid.Width / grid.Ways.Min(way => way.Width));
        var scale = 1L << 26;
        while (scale > 1 && most * scale >= (Int128)1 << 62)
        {
            scale >>= 1;
        }

        return scale;
    }

    /// <summary>Fills the tables for one value per piece of the grid, none negative.</summary>
    public void Solve(ReadOnlySpan<long> valueOfPiece)
    {
        Array.Clear(best);
        var height = 0;
        for (var i = 0; i < items.Length; i++)
        {
            while (firstItemAbove[height] <= i)
            {
                valueOfHeight[height++] = best[capacity];
            }

            var bits = taken.AsSpan(i * wordsPerItem, wordsPerItem);
            bits.Clear();
            var item = items[i];
            var value = valueOfPiece[grid.Ways[item.Way].Piece] * item.Copies;
            if (value > 0 && item.Width <= capacity)
            {
                if (item.Repeats)
                {
                    TakeRepeatedly(item.Width, value, bits);
                }
                else
                {
                    TakeOnce(item.Width, value, bits);
                }
            }
        }

        while (height < valueOfHeight.Length)
        {
            valueOfHeight[height++] = best[capacity];
        }
    }

    /// <summary>The value of the best strip no higher than candidate height number <paramref name="height"/>.</summary>
    public long Value(int height) => valueOfHeight[height];

    /// <summary>A strip of that value.</summary>
    public ImmutableArray<PatternCell> Cut(int height)
    {
        var cells = new SortedDictionary<int, int>();
        var left = capacity;
        for (var i = firstItemAbove[height] - 1; i >= 0; i--)
        {
            var item = items[i];
            while ((taken[(i * (long)wordsPerItem) + (left >> 6)] >> (left & 63) & 1) != 0)
            {
                cells[item.Way] = cells.GetValueOrDefault(item.Way) + item.Copies;
                left -= item.Width;
                if (!item.Repeats)
                {
                    break;
                }
            }
        }

        return [.. cells.Select(cell => new PatternCell(cell.Key, cell.Value))];
    }

    private void TakeRepeatedly(int width, long value, Span<ulong> bits)
    {
        for (var x = width; x < best.Length; x++)
        {
            var with = best[x - width] + value;
            if (with > best[x])
            {
                best[x] = with;
                bits[x >> 6] |= 1UL << (x & 63);
            }
        }
    }

    private void TakeOnce(int width, long value, Span<ulong> bits)
    {
        for (var x = best.Length - 1; x >= width; x--)
        {
            var with = best[x - width] + value;
            if (with > best[x])
            {
                best[x] = with;
                bits[x >> 6] |= 1UL << (x & 63);
            }
        }
    }

    private static int WidthDivisor(StripGrid grid) =>
        grid.Ways.IsEmpty
            ? grid.Width
            : grid.Ways.Aggregate(0, (divisor, way) => (int)BigInteger.GreatestCommonDivisor(divisor, way.Width));

    private static IEnumerable<Item> ItemsOf(StripGrid grid, Way way, int index, int divisor)
    {
        var count = grid.Pieces[way.Piece].Count;
        var width = way.Width / divisor;
        if (count >= grid.Width / way.Width)
        {
            yield return new(index, width, 1, Repeats: true);
            yield break;
        }

        for (var copies = 1; count > 0; copies *= 2)
        {
            var these = Math.Min(copies, count);
            yield return new(index, width * these, these, Repeats: false);
            count -= these;
        }
    }

    private readonly record struct Item(int Way, int Width, int Copies, bool Repeats);
}
