using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>Between how many strips of each candidate height a plan takes.</summary>
internal sealed record CountLimits(ImmutableArray<int> AtLeast, ImmutableArray<int> AtMost)
{
    /// <summary>No limits but the natural ones.</summary>
    public static CountLimits Of(StripGrid grid) => new([.. grid.Heights.Select(_ => 0)], [.. BranchedBound.MostStrips(grid)]);

    public CountLimits Fewer(int height, int atMost) => this with { AtMost = AtMost.SetItem(height, atMost) };

    public CountLimits More(int height, int atLeast) => this with { AtLeast = AtLeast.SetItem(height, atLeast) };
}

/// <summary>A solved linear program of plans within limits.</summary>
/// <param name="Duals">One a piece; none negative.</param>
/// <param name="HeightDuals">One a height, so that no strip is worth more than its height.</param>
/// <param name="Counts">Strips of each height; fractional.</param>
/// <param name="Strips">The strips and how often each is cut; fractional.</param>
internal sealed record CountedRelaxation(
    CountLimits Limits,
    ImmutableArray<long> Duals,
    ImmutableArray<long> HeightDuals,
    ImmutableArray<double> Counts,
    List<(Column Column, double Times)> Strips
)
{
    /// <summary>No plan within the limits is shorter; in 1/scale units.</summary>
    public Int128 Worth(StripGrid grid) => BranchedBound.WorthOf(grid, new(Duals, HeightDuals), [.. Limits.AtLeast], [.. Limits.AtMost]);

    /// <summary>The strips that are cut a whole number of times, rounded down.</summary>
    /// <param name="left">Pieces wanted; what these strips yield is taken off.</param>
    public List<CutStrips> Whole(Span<int> left)
    {
        var whole = new List<CutStrips>();
        foreach (var (column, times) in Strips)
        {
            var most = Math.Min((int)Math.Floor(times + 1e-6), column.EnoughTimes(left));
            if (most > 0)
            {
                whole.Add(new(column.Pattern, most));
                for (var i = 0; i < column.Pieces.Length; i++)
                {
                    left[column.Pieces[i]] = Math.Max(0, left[column.Pieces[i]] - (most * column.Copies[i]));
                }
            }
        }

        return whole;
    }
}
