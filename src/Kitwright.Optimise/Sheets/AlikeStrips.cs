using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>Two stages, homogeneous: a strip holds pieces of one kind, side by side, and is just as high.</summary>
internal sealed class AlikeStrips : StripTable
{
    private readonly int[] bestWay;
    private int[] counts = [];

    public AlikeStrips(Plate plate, WorkMeter meter)
        : base(plate, meter)
    {
        Heights = [.. plate.Ways.Select(way => way.Across).Distinct()];
        Values = new long[Heights.Length];
        bestWay = new int[Heights.Length];
    }

    public override long Cells => Plate.Ways.Length;

    protected override void Fill(ReadOnlySpan<long> values, ReadOnlySpan<int> counts, int most)
    {
        this.counts = counts.ToArray();
        for (var w = 0; w < Plate.Ways.Length && Plate.Ways[w].Across <= most; w++)
        {
            var at = Heights.AsSpan().BinarySearch(Plate.Ways[w].Across);
            var value = Fits(w) * values[Plate.Ways[w].Piece];
            if (value > Values[at])
            {
                (Values[at], bestWay[at]) = (value, w);
            }
        }

        Meter.Charge(Plate.Ways.Length);
    }

    public override PatternStrip Cut(int height)
    {
        var way = Plate.Ways[bestWay[height]];
        return new(way.Across, 1, [new(way.Along, Fits(bestWay[height]), [new(way.Piece, way.Turned, 1)])]);
    }

    private int Fits(int way) => Math.Min(counts[Plate.Ways[way].Piece], Plate.Across / Plate.Ways[way].Along);
}
