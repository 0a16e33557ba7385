using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// Two stages: pieces side by side in a strip. With trimming a strip holds what is no higher than it; without, what
/// is just as high.
/// </summary>
internal sealed class SideBySide : StripTable
{
    private readonly bool trimmed;
    private readonly BoundedKnapsack knapsack;
    private long[] values = [];
    private int[] counts = [];

    public SideBySide(Plate plate, bool trimmed, WorkMeter meter)
        : base(plate, meter)
    {
        knapsack = new(meter);
        this.trimmed = trimmed;
        Heights = [.. plate.Ways.Select(way => way.Across).Distinct()];
        Values = new long[Heights.Length];
    }

    public override long Cells => Plate.Ways.Length * (long)Plate.Across;

    protected override void Fill(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most)
    {
        (this.values, this.counts) = (values.ToArray(), counts.ToArray());
        knapsack.Reset(Plate.Across);
        var way = 0;
        for (var h = 0; h < Heights.Length && Heights[h] <= most; h++)
        {
            if (!trimmed)
            {
                knapsack.Reset(Plate.Across);
            }

            for (; way < Plate.Ways.Length && Plate.Ways[way].Across == Heights[h]; way++)
            {
                Admit(way);
            }

            Values[h] = knapsack.Value(Plate.Across);
        }
    }

    public override PatternStrip Cut(int height)
    {
        knapsack.Reset(Plate.Across);
        for (var way = 0; way < Plate.Ways.Length && Plate.Ways[way].Across <= Heights[height]; way++)
        {
            if (trimmed || Plate.Ways[way].Across == Heights[height])
            {
                Admit(way);
            }
        }

        var chosen = knapsack.Choice(Plate.Across).Select(c => (Way: Plate.Ways[c.Id], c.Copies));
        return new(
            Heights[height],
            1,
            [.. chosen.Select(c => new PatternSubCut(c.Way.Along, c.Copies, [new(c.Way.Piece, c.Way.Turned, 1)]))]
        );
    }

    private void Admit(int way)
    {
        var (piece, along) = (Plate.Ways[way].Piece, Plate.Ways[way].Along);
        knapsack.Add(way, along, values[piece], counts[piece]);
    }
}
