using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// The bounded knapsack by dynamic programming over the capacity; copies by binary splitting. Whole numbers throughout.
/// Buffers are kept between uses: one object serves one thread.
/// </summary>
/// <remarks>S. Martello and P. Toth, "Knapsack Problems", 1990, chapter 3.</remarks>
internal sealed class BoundedKnapsack(WorkMeter meter)
{
    private readonly List<Item> items = [];
    private long[] best = [];
    private ulong[] taken = [];
    private int words;

    public int Capacity { get; private set; }

    /// <summary>The greatest value within a capacity, over the items added so far.</summary>
    public long Value(int capacity) => best[capacity];

    public ReadOnlySpan<long> Values => best.AsSpan(0, Capacity + 1);

    public void Reset(int capacity)
    {
        Capacity = capacity;
        if (best.Length <= capacity)
        {
            best = new long[capacity + 1];
        }

        Array.Clear(best, 0, capacity + 1);
        items.Clear();
        words = (capacity >> 6) + 1;
    }

    /// <summary>Admits up to <paramref name="count"/> copies of an item; weight and value above 0.</summary>
    public void Add(int id, int weight, long value, int count)
    {
        if (weight > Capacity || count <= 0 || value <= 0)
        {
            return;
        }

        if (count >= Capacity / weight)
        {
            var bits = NewItem(new(id, weight, 1, Repeats: true));
            for (var x = weight; x <= Capacity; x++)
            {
                Take(x, weight, value, bits);
            }

            return;
        }

        for (var copies = 1; count > 0; copies *= 2)
        {
            var these = Math.Min(copies, count);
            var bits = NewItem(new(id, weight * these, these, Repeats: false));
            for (var x = Capacity; x >= weight * these; x--)
            {
                Take(x, weight * these, value * these, bits);
            }

            count -= these;
        }
    }

    /// <summary>Copies by item of a best choice within a capacity.</summary>
    public List<(int Id, int Copies)> Choice(int capacity)
    {
        var chosen = new SortedDictionary<int, int>();
        for (var i = items.Count - 1; i >= 0; i--)
        {
            var item = items[i];
            while ((taken[(i * (long)words) + (capacity >> 6)] >> (capacity & 63) & 1) != 0)
            {
                chosen[item.Id] = chosen.GetValueOrDefault(item.Id) + item.Copies;
                capacity -= item.Weight;
                if (!item.Repeats)
                {
                    break;
                }
            }
        }

        return [.. chosen.Select(pair => (pair.Key, pair.Value))];
    }

    private void Take(int x, int weight, long value, Span<ulong> bits)
    {
        var with = best[x - weight] + value;
        if (with > best[x])
        {
            best[x] = with;
            bits[x >> 6] |= 1UL << (x & 63);
        }
    }

    private Span<ulong> NewItem(Item item)
    {
        var from = items.Count * (long)words;
        if (taken.LongLength < from + words)
        {
            Array.Resize(ref taken, (int)Math.Max(2L * taken.Length, from + words));
        }

        items.Add(item);
        // Two cells of the table take about a nanosecond.
        meter.Charge(10 + ((Capacity - item.Weight) / 2));
        var bits = taken.AsSpan((int)from, words);
        bits.Clear();
        return bits;
    }

    private readonly record struct Item(int Id, int Weight, int Copies, bool Repeats);
}
