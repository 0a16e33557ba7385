using Kitwright.Measure;

namespace Kitwright.Accuracy;

/// <summary>Counts one worker's quilts.</summary>
internal sealed class Tally
{
    /// <summary>Bins of 1/64 in from −1/2 to 1/2 in; what lies beyond is in the last.</summary>
    public const int HalfBins = 32;

    /// <summary>Of the worse side of each block, by ticks of a length up to half an inch; what lies beyond is in the last.</summary>
    public long[] Worst { get; } = new long[(Length.TicksPerInch / 2) + 1];

    public long[] Bins { get; } = new long[(2 * HalfBins) + 1];
    public long Blocks { get; private set; }
    public long OverSixteenth { get; private set; }
    public long OverEighth { get; private set; }
    public long Pleats { get; set; }
    public long Trims { get; set; }
    public long TooSmall { get; set; }
    public Sums BlockSums { get; } = new();
    public Sums TopAcross { get; } = new();
    public Sums TopUp { get; } = new();

    public void Block(double across, double up)
    {
        Blocks++;
        BlockSums.Add(across);
        BlockSums.Add(up);
        Bins[Bin(across)]++;
        Bins[Bin(up)]++;
        var off = Math.Max(Math.Abs(across), Math.Abs(up));
        Worst[(int)Math.Min(off * Length.TicksPerInch, Worst.Length - 1)]++;
        OverSixteenth += off > 1.0 / 16 ? 1 : 0;
        OverEighth += off > 1.0 / 8 ? 1 : 0;
    }

    public void Top(double across, double up)
    {
        TopAcross.Add(across);
        TopUp.Add(up);
    }

    private static int Bin(double off) => HalfBins + (int)Math.Clamp(Math.Round(off * 64), -HalfBins, HalfBins);
}

/// <summary>Mean and variance as they grow.</summary>
internal sealed class Sums
{
    public long Count { get; private set; }
    private double sum;
    private double squares;

    public void Add(double value)
    {
        Count++;
        sum += value;
        squares += value * value;
    }

    public void Add(Sums other)
    {
        Count += other.Count;
        sum += other.sum;
        squares += other.squares;
    }

    public Spread Spread => Count == 0 ? default : new(sum / Count, Math.Sqrt(Math.Max(0, (squares / Count) - (sum / Count * (sum / Count)))), Count);
}
