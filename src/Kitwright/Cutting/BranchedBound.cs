using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>
/// A bound by cases: how many strips of a height there are is at most so many, or more; and duals for every case. What it
/// means and how it is recomputed stands with <see cref="Plans.Proof"/>.
/// </summary>
/// <remarks>
/// F. Vanderbeck, "On Dantzig-Wolfe decomposition in integer programming and ways to perform branching in a
/// branch-and-price algorithm", Operations Research 48(1), 2000: branching on sums of columns (from memory).
/// </remarks>
public abstract record BranchedBound
{
    /// <summary>
    /// No plan has more strips of each height than there are pieces that can give a strip that height: a strip is never
    /// higher than its highest piece.
    /// </summary>
    public static IEnumerable<int> MostStrips(StripGrid grid) =>
        grid.Heights.Select(height =>
            (int)Math.Min(int.MaxValue, grid.Ways.Where(way => way.Height == height).Select(way => way.Piece).Distinct().Sum(piece => (long)grid.Counts[piece]))
        );

    /// <summary>No plan within the limits is shorter than this; in 1/scale units.</summary>
    public static Int128 WorthOf(StripGrid grid, CountDuals leaf, ReadOnlySpan<int> atLeast, ReadOnlySpan<int> atMost)
    {
        var worth = grid.Worth(leaf.Duals.AsSpan());
        for (var h = 0; h < leaf.HeightDuals.Length; h++)
        {
            var dual = leaf.HeightDuals[h];
            worth += (Int128)dual * (dual > 0 ? atLeast[h] : atMost[h]);
        }

        return worth;
    }
}

/// <summary>Plans with at most so many strips of a candidate height, and plans with more.</summary>
/// <param name="Height">Index of the height.</param>
public sealed record CountSplit(int Height, int AtMost, BranchedBound Fewer, BranchedBound More) : BranchedBound;

/// <summary>Duals of one case.</summary>
/// <param name="Duals">One a piece; none negative.</param>
/// <param name="HeightDuals">
/// One a candidate height, of either sign: what the pieces of a strip of that height are worth, and this, are together never more
/// than the height.
/// </param>
public sealed record CountDuals(ImmutableArray<long> Duals, ImmutableArray<long> HeightDuals) : BranchedBound;
