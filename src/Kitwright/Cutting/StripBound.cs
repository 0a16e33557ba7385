using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>A lower bound on the sum of strip heights with the duals it follows from, as <see cref="Plans.Proof"/> says.</summary>
/// <param name="Length">In units.</param>
/// <param name="Scale">Duals are in 1/Scale units.</param>
/// <param name="Duals">One per piece of the grid; empty where the bound is by area.</param>
public sealed record StripBound(long Length, long Scale, ImmutableArray<long> Duals)
{
    /// <summary>Cases with duals of their own; null where <see cref="Duals"/> or the area give the bound.</summary>
    public BranchedBound? Cases { get; init; }

    /// <summary>Total area by strip width, rounded up to a sum of heights.</summary>
    public static StripBound ByArea(StripGrid grid, SumsOfHeights sums)
    {
        var area = grid.Area;
        return new(sums.RoundUp((long)((area + grid.Width - 1) / grid.Width)), 1, []);
    }

    public static StripBound Greater(StripBound x, StripBound y) => y.Length > x.Length ? y : x;
}
