namespace Kitwright.Fabrics.Prints;

/// <summary>A woven check: bands both ways, full where they cross.</summary>
internal static class CheckPrint
{
    public static void Draw(TileSketch tile)
    {
        var band = tile.Dice.Roll(7, 15) * 20;
        (tile.Width, tile.Height) = (band * 2, band * 2);
        var soft = tile.Ground.Mix(tile.Second, 50);
        tile.Rectangle(0, 0, band, band * 2, soft);
        tile.Rectangle(0, 0, band * 2, band, soft);
        tile.Rectangle(0, 0, band, band, tile.Second);
    }
}
