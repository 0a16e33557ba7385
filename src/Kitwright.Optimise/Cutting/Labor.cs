using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>What strips ask of a person.</summary>
internal static class Labor
{
    /// <summary>Ruler settings along the cloth: of strips and of what is trimmed from them.</summary>
    public static HashSet<int> SettingsOf(StripGrid grid, ImmutableArray<CutStrips> strips) =>
        [.. strips.SelectMany(s => SettingsOf(grid, s.Pattern))];

    /// <summary>The strip's own height, and each height to which pieces are trimmed.</summary>
    public static IEnumerable<int> SettingsOf(StripGrid grid, StripPattern pattern) =>
        pattern.Cells.Select(cell => grid.Ways[cell.Way].Height).Append(pattern.Height).Distinct();

    public static long CutsOf(StripGrid grid, ImmutableArray<CutStrips> strips) => strips.Sum(s => s.Times * CutsOf(grid, s.Pattern));

    /// <summary>The strip itself, its sub-cuts and its trims; of a folded strip each pass of the blade once.</summary>
    public static long CutsOf(StripGrid grid, StripPattern pattern) =>
        1 + pattern.Cells.Sum(cell => (cell.Times + grid.Fold - 1) / grid.Fold * (grid.Ways[cell.Way].Height < pattern.Height ? 2L : 1L));
}
