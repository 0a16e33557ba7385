namespace Kitwright.Fabrics.Prints;

/// <summary>Stripes along the length of the fabric, wide and narrow, in two strengths of the second color.</summary>
internal static class StripePrint
{
    public static void Draw(TileSketch tile)
    {
        var unit = tile.Dice.Roll(5, 9) * 10;
        var wide = tile.Dice.Roll(3, 6);
        (tile.Width, tile.Height) = (unit * (wide + 9), 1000);
        var soft = tile.Ground.Mix(tile.Second, 55);
        tile.Rectangle(unit, 0, unit * wide, tile.Height, tile.Second);
        tile.Rectangle(unit * (wide + 3), 0, unit, tile.Height, soft);
        tile.Rectangle(unit * (wide + 5), 0, unit, tile.Height, tile.Second);
        tile.Rectangle(unit * (wide + 7), 0, unit, tile.Height, soft);
    }
}
