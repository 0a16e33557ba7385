using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pages;

/// <summary>Divides a drawing that is larger than a sheet into equal tiles, row by row from the top left.</summary>
public static class SheetTiles
{
    /// <param name="width">Of the drawing, in points; as are all others.</param>
    public static ImmutableArray<SheetTile> Of(double width, double height, double mostWidth, double mostHeight)
    {
        int across = Math.Max(1, (int)Math.Ceiling(width / mostWidth)),
            down = Math.Max(1, (int)Math.Ceiling(height / mostHeight));
        double wide = width / across,
            high = height / down;
        return
        [
            .. from row in Enumerable.Range(0, down)
            from column in Enumerable.Range(0, across)
            select new SheetTile((row * across) + column + 1, row, column, across, down, new(column * wide, row * high, wide, high)),
        ];
    }
}

/// <summary>What one sheet shows of a drawing.</summary>
/// <param name="Number">From 1, row by row.</param>
/// <param name="Across">Tiles in a row.</param>
/// <param name="Down">Rows of tiles.</param>
/// <param name="Window">In the drawing's own points, y down.</param>
public sealed record SheetTile(int Number, int Row, int Column, int Across, int Down, Box Window);
