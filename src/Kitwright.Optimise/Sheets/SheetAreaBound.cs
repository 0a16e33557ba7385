using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Sheets;

/// <summary>What the area of all pieces costs at least, however they are laid; needs no linear program.</summary>
internal static class SheetAreaBound
{
    /// <summary>In cost units; more than all sheets cost where they have too little area together.</summary>
    public static long Of(SheetGrid grid)
    {
        var area = grid.Pieces.Aggregate(Int128.Zero, (sum, piece) => sum + ((Int128)piece.Area * piece.Count));
        if (grid.IsOpen)
        {
            var sheet = grid.Sheets[0];
            return RoundUp(grid, sheet.Cost * (long)((area + sheet.Width - 1) / sheet.Width));
        }

        // The cheapest area first; of the last sheet a part, whose cost is rounded up.
        var cost = 0L;
        foreach (var sheet in grid.Sheets.Where(s => s.Count != 0 && s.Area > 0).OrderBy(s => (decimal)s.Cost / s.Area))
        {
            if (sheet.Count is { } count && (Int128)sheet.Area * count < area)
            {
                area -= (Int128)sheet.Area * count;
                cost += sheet.Cost * count;
                continue;
            }

            return cost + (long)(((area * sheet.Cost) + sheet.Area - 1) / sheet.Area);
        }

        return area > 0 ? grid.Sheets.Sum(sheet => sheet.Cost * sheet.Count!.Value) + 1 : cost;
    }

    /// <summary>Of a cloth of open length: strips are as high as pieces, or as several above one another.</summary>
    public static long RoundUp(SheetGrid grid, long cost)
    {
        var unit = grid.Sheets[0].Cost;
        var across = grid.Sheets[0].Width / grid.Terms.Folds.Min();
        var lows = grid.Pieces.Where(p => p.Width <= across).Select(p => p.Height);
        var turned = grid.Pieces.Where(p => p.MayTurn && p.Height <= across).Select(p => p.Width);
        return new SumsOfHeights([.. lows.Concat(turned).Distinct().Order()]).RoundUp((cost + unit - 1) / unit) * unit;
    }
}
