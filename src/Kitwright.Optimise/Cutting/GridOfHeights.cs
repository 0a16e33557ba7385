using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>A grid whose pieces may lie only so that they are of certain heights: what certain ruler settings can cut.</summary>
/// <param name="Grid">The same pieces, fewer ways.</param>
internal sealed record GridOfHeights(StripGrid Grid, StripGrid Whole, ImmutableArray<int> WayInWhole)
{
    /// <summary>Null where a piece has no way of these heights.</summary>
    public static GridOfHeights? Of(StripGrid whole, IReadOnlySet<int> heights)
    {
        ImmutableArray<int> ways = [.. Enumerable.Range(0, whole.Ways.Length).Where(way => heights.Contains(whole.Ways[way].Height))];
        if (ways.Select(way => whole.Ways[way].Piece).Distinct().Count() < whole.Pieces.Length)
        {
            return null;
        }

        ImmutableArray<Way> kept = [.. ways.Select(way => whole.Ways[way])];
        return new(new(whole.Unit, whole.Width, whole.Pieces, kept, [.. kept.Select(way => way.Height).Distinct()]) { Fold = whole.Fold }, whole, ways);
    }

    public ImmutableArray<CutStrips> InWhole(ImmutableArray<CutStrips> strips) =>
        [.. strips.Select(s => s with { Pattern = With(s.Pattern, way => WayInWhole[way]) })];

    /// <summary>The same strips in this grid; null where one has a piece of another height.</summary>
    public ImmutableArray<CutStrips>? Here(ImmutableArray<CutStrips> strips) =>
        strips.All(s => s.Pattern.Cells.All(cell => WayInWhole.BinarySearch(cell.Way) >= 0))
            ? [.. strips.Select(s => s with { Pattern = With(s.Pattern, way => WayInWhole.BinarySearch(way)) })]
            : null;

    private static StripPattern With(StripPattern pattern, Func<int, int> way) =>
        pattern with { Cells = [.. pattern.Cells.Select(cell => cell with { Way = way(cell.Way) })] };
}
