using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// Three stages, homogeneous: a sub-cut is as wide as its piece and holds copies of it alone, one above the other. A
/// strip need be no higher than a whole number of copies of one of its pieces.
/// </summary>
internal sealed class AlikeStacks : StripTable
{
    private readonly BoundedKnapsack knapsack;
    private long[] values = [];
    private int[] counts = [];

    public AlikeStacks(Plate plate, WorkMeter meter)
        : base(plate, meter)
    {
        knapsack = new(meter);
        Heights =
        [
            .. plate
                .Ways.SelectMany(way => Enumerable.Range(1, plate.Up / way.Across).Select(copies => copies * way.Across))
                .Distinct()
                .Order(),
        ];
        Values = new long[Heights.Length];
    }

    public override long Cells => Heights.Length * (long)Plate.Ways.Length * Plate.Across;

    protected override void Fill(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most)
    {
        (this.values, this.counts) = (values.ToArray(), counts.ToArray());
        for (var h = 0; h < Heights.Length && Heights[h] <= most; h++)
        {
            Lay(h);
            Values[h] = knapsack.Value(Plate.Across);
        }
    }

    public override PatternStrip Cut(int height)
    {
        Lay(height);
        var cuts = knapsack
            .Choice(Plate.Across)
            .Select(c =>
            {
                // Two entries a way: full stacks, and one stack of what is left over.
                var way = Plate.Ways[c.Id / 2];
                var (full, rest) = Stack(way, Heights[height]);
                return new PatternSubCut(way.Along, c.Copies, [new(way.Piece, way.Turned, c.Id % 2 == 0 ? full : rest)]);
            });
        return new(Heights[height], 1, [.. cuts]);
    }

    private void Lay(int height)
    {
        knapsack.Reset(Plate.Across);
        for (var w = 0; w < Plate.Ways.Length && Plate.Ways[w].Across <= Heights[height]; w++)
        {
            var way = Plate.Ways[w];
            if (values[way.Piece] == 0 || counts[way.Piece] == 0)
            {
                continue;
            }

            var (full, rest) = Stack(way, Heights[height]);
            knapsack.Add(2 * w, way.Along, full * values[way.Piece], full == 0 ? 0 : counts[way.Piece] / full);
            knapsack.Add((2 * w) + 1, way.Along, rest * values[way.Piece], 1);
        }
    }

    /// <summary>How many lie one above the other in a full stack, and in the one for the rest.</summary>
    private (int Full, int Over) Stack(Lay way, int height)
    {
        var fits = height / way.Across;
        return fits > counts[way.Piece] ? (0, counts[way.Piece]) : (fits, counts[way.Piece] % fits);
    }
}
