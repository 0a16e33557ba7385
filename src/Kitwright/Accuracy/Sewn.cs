using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Accuracy;

/// <summary>What many quilts came to, in inches beyond the size as designed.</summary>
/// <param name="Quilts">How many were sewn.</param>
/// <param name="Block">Sides of blocks, width and height alike.</param>
/// <param name="Across">The top's width.</param>
/// <param name="Up">The top's height.</param>
/// <param name="OverSixteenth">Share of blocks of which a side is off by more than 1/16 in.</param>
/// <param name="OverEighth">The same by more than 1/8 in.</param>
/// <param name="Pleats">For each quilt, joins of which the edges differ by more than can be eased.</param>
/// <param name="TooSmall">Share of trims that find nothing to trim.</param>
/// <param name="Bins">Sides of blocks by sixty-fourths of an inch, from −32 to 32.</param>
public sealed record Sewn(
    int Quilts,
    Spread Block,
    Spread Across,
    Spread Up,
    double OverSixteenth,
    double OverEighth,
    double Pleats,
    double TooSmall,
    ImmutableArray<long> Bins
)
{
    /// <summary>Blocks by how far their worse side is off, in ticks of a length.</summary>
    internal ImmutableArray<long> Worst { get; init; } = [];

    /// <summary>Share of blocks of which a side is off by more than a tolerance.</summary>
    public double Over(Length tolerance)
    {
        var ticks = (int)(tolerance.InInches * Length.TicksPerInch).Ceiling();
        return Worst.Skip(ticks).Sum() / (double)Math.Max(1, Worst.Sum());
    }

    internal static Sewn Of(Tally[] shares, int quilts)
    {
        Sums blocks = new(),
            across = new(),
            up = new();
        var bins = new long[(2 * Tally.HalfBins) + 1];
        foreach (var share in shares)
        {
            blocks.Add(share.BlockSums);
            across.Add(share.TopAcross);
            up.Add(share.TopUp);
            for (var i = 0; i < bins.Length; i++)
            {
                bins[i] += share.Bins[i];
            }
        }

        double count = Math.Max(1, shares.Sum(s => s.Blocks)),
            trims = Math.Max(1, shares.Sum(s => s.Trims));
        return new(
            quilts,
            blocks.Spread,
            across.Spread,
            up.Spread,
            shares.Sum(s => s.OverSixteenth) / count,
            shares.Sum(s => s.OverEighth) / count,
            shares.Sum(s => s.Pleats) / (double)quilts,
            shares.Sum(s => s.TooSmall) / trims,
            [.. bins]
        )
        {
            Worst = [.. Enumerable.Range(0, shares[0].Worst.Length).Select(i => shares.Sum(share => share.Worst[i]))],
        };
    }
}

/// <summary>A mean and a standard deviation, in inches.</summary>
public readonly record struct Spread(double Mean, double Deviation, long Count)
{
    /// <summary>Of the mean, where the counted values are independent.</summary>
    public double StandardError => Deviation / Math.Sqrt(Count);
}
