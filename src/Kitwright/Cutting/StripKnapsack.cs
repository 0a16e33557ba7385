using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;

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
    private readonly int[] widths;
    private readonly long[] best;
    private readonly long[] valueOfHeight;
    private readonly int[] itemsUpToHeight;
    private readonly int wordsPerItem;
    private readonly List<Item> items = [];
    private ulong[] taken = [];

    public StripKnapsack(StripGrid grid)
    {
        this.grid = grid;
        var divisor = WidthDivisor(grid);
        capacity = grid.Width / divisor;
        widths = [.. grid.Ways.Select(way => way.Width / divisor)];
        best = new long[capacity + 1];
        valueOfHeight = new long[grid.Heights.Length];
        itemsUpToHeight = new int[grid.Heights.Length];
        wordsPerItem = (capacity >> 6) + 1;
    }

    /// <summary>Table cells that one <see cref="Solve"/> goes through: the measure of its time and memory.</summary>
    public static long CellsOf(StripGrid grid) =>
        grid.Ways.Sum(way => (long)ItemsFor(grid.Pieces[way.Piece].Count, grid.Width / way.Width))
        * ((grid.Width / WidthDivisor(grid)) + 1);

    /// <summary>Cells gone through by the last <see cref="Solve"/>.</summary>
    public long Cells => items.Count * (long)(capacity + 1);

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

    /// <summary>Fills the tables for one value and one greatest number of copies per piece of the grid, none negative.</summary>
    public void Solve(ReadOnlySpan<long> valueOfPiece, ReadOnlySpan<int> copiesOfPiece)
    {
        Array.Clear(best);
        items.Clear();
        var way = 0;
        for (var h = 0; h < valueOfHeight.Length; h++)
        {
            for (; way < grid.Ways.Length && grid.Ways[way].Height == grid.Heights[h]; way++)
            {
                var piece = grid.Ways[way].Piece;
                if (valueOfPiece[piece] > 0 && copiesOfPiece[piece] > 0)
                {
                    Admit(way, valueOfPiece[piece], copiesOfPiece[piece]);
                }
            }

            valueOfHeight[h] = best[capacity];
            itemsUpToHeight[h] = items.Count;
        }
    }

    /// <summary>
    /// Fills the tables for one candidate height alone, and holds a piece that may lie either way to its count over both
    /// ways together: where both fit, only the narrower is taken in, which gives no less. For <see cref="Value"/> and
    /// <see cref="Cut"/> of that height; nothing is said about others.
    /// </summary>
    public void SolveProperly(int height, ReadOnlySpan<long> valueOfPiece, ReadOnlySpan<int> copiesOfPiece)
    {
        Array.Clear(best);
        items.Clear();
        for (var way = 0; way < grid.Ways.Length && grid.Ways[way].Height <= grid.Heights[height]; way++)
        {
            var (piece, width) = (grid.Ways[way].Piece, grid.Ways[way].Width);
            if (valueOfPiece[piece] > 0 && copiesOfPiece[piece] > 0 && !HasNarrower(piece, width, grid.Heights[height]))
            {
                Admit(way, valueOfPiece[piece], copiesOfPiece[piece]);
            }
        }

        valueOfHeight[height] = best[capacity];
        itemsUpToHeight[height] = items.Count;
    }

    private bool HasNarrower(int piece, int width, int height)
    {
        foreach (var other in grid.WaysOf[piece])
        {
            if (grid.Ways[other].Width < width && grid.Ways[other].Height <= height)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The value of the best strip no higher than candidate height number <paramref name="height"/>.</summary>
    public long Value(int height) => valueOfHeight[height];

    /// <summary>A strip of that value: adds to each way how often it is cut.</summary>
    public void Cut(int height, Span<int> timesOfWay)
    {
        var left = capacity;
        for (var i = itemsUpToHeight[height] - 1; i >= 0; i--)
        {
            var item = items[i];
            while ((taken[(i * (long)wordsPerItem) + (left >> 6)] >> (left & 63) & 1) != 0)
            {
                timesOfWay[item.Way] += item.Copies;
                left -= item.Width;
                if (!item.Repeats)
                {
                    break;
                }
            }
        }
    }

    private void Admit(int way, long value, int count)
    {
        var width = widths[way];
        if (count >= capacity / width)
        {
            TakeRepeatedly(width, value, NewItem(new(way, width, 1, Repeats: true)));
            return;
        }

        for (var copies = 1; count > 0; copies *= 2)
        {
            var these = Math.Min(copies, count);
            TakeOnce(width * these, value * these, NewItem(new(way, width * these, these, Repeats: false)));
            count -= these;
        }
    }

    private Span<ulong> NewItem(Item item)
    {
        var from = items.Count * (long)wordsPerItem;
        if (taken.LongLength < from + wordsPerItem)
        {
            Array.Resize(ref taken, (int)Math.Max(2L * taken.Length, from + wordsPerItem));
        }

        items.Add(item);
        var bits = taken.AsSpan((int)from, wordsPerItem);
        bits.Clear();
        return bits;
    }

    // Four cells at a time where the machine can: a block of equal copies reads only cells that are done with. Sums stay
    // below 2^62 (see ScaleFor), so that nothing overflows unseen.
    private void TakeRepeatedly(int width, long value, Span<ulong> bits)
    {
        unchecked
        {
            var cells = best.AsSpan();
            var x = width;
            if (width >= Vector256<long>.Count && Vector256.IsHardwareAccelerated)
            {
                for (; (x & 3) != 0 && x < cells.Length; x++)
                {
                    TakeCell(cells, x, width, value, bits);
                }

                var values = Vector256.Create(value);
                for (; x + Vector256<long>.Count <= cells.Length; x += Vector256<long>.Count)
                {
                    TakeCells(ref cells[0], x, width, values, bits);
                }
            }

            for (; x < cells.Length; x++)
            {
                TakeCell(cells, x, width, value, bits);
            }
        }
    }

    private void TakeOnce(int width, long value, Span<ulong> bits)
    {
        unchecked
        {
            var cells = best.AsSpan();
            var x = cells.Length - 1;
            if (Vector256.IsHardwareAccelerated)
            {
                for (; (x & 3) != 3 && x >= width; x--)
                {
                    TakeCell(cells, x, width, value, bits);
                }

                var values = Vector256.Create(value);
                for (; x - 3 >= width; x -= Vector256<long>.Count)
                {
                    TakeCells(ref cells[0], x - 3, width, values, bits);
                }
            }

            for (; x >= width; x--)
            {
                TakeCell(cells, x, width, value, bits);
            }
        }
    }

    private static void TakeCell(Span<long> cells, int x, int width, long value, Span<ulong> bits)
    {
        var with = cells[x - width] + value;
        if (with > cells[x])
        {
            cells[x] = with;
            bits[x >> 6] |= 1UL << (x & 63);
        }
    }

    /// <param name="x">A multiple of 4, so that the four bits lie in one word.</param>
    private static void TakeCells(ref long cells, int x, int width, Vector256<long> value, Span<ulong> bits)
    {
        var with = Vector256.LoadUnsafe(ref cells, (nuint)(x - width)) + value;
        var without = Vector256.LoadUnsafe(ref cells, (nuint)x);
        var more = Vector256.GreaterThan(with, without);
        if (more != Vector256<long>.Zero)
        {
            Vector256.ConditionalSelect(more, with, without).StoreUnsafe(ref cells, (nuint)x);
            bits[x >> 6] |= (ulong)more.ExtractMostSignificantBits() << (x & 63);
        }
    }

    private static int WidthDivisor(StripGrid grid) =>
        grid.Ways.IsEmpty
            ? grid.Width
            : grid.Ways.Aggregate(0, (divisor, way) => (int)BigInteger.GreatestCommonDivisor(divisor, way.Width));

    private static int ItemsFor(int count, int fits) => count >= fits ? 1 : 32 - int.LeadingZeroCount(count);

    private readonly record struct Item(int Way, int Width, int Copies, bool Repeats);
}
