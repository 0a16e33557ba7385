using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Sheets;

/// <summary>Sheets that are cut, and what that comes to.</summary>
/// <param name="Worth">Cost, and the penalties of what is missing: less is better.</param>
internal sealed record SheetSolution(ImmutableArray<CutSheets> Sheets, long Cost, long Worth)
{
    /// <summary>Surplus is taken out first.</summary>
    public static SheetSolution Of(SheetGrid grid, IEnumerable<CutSheets> sheets)
    {
        var kept = SheetSurplus.Remove(grid, sheets);
        var left = grid.Counts.ToArray();
        foreach (var sheet in kept)
        {
            foreach (var (piece, copies) in sheet.Pattern.Cells())
            {
                left[piece] -= sheet.Times * copies;
            }
        }

        var cost = kept.Sum(sheet => sheet.Times * grid.CostOf(sheet.Pattern));
        var penalty = Enumerable.Range(0, left.Length).Where(i => left[i] > 0).Sum(i => left[i] * grid.PenaltyOf(i));
        return new(kept, cost, cost + penalty);
    }

    public bool IsWhole => Worth == Cost;
}
