namespace Kitwright.Fabrics.Prints;

/// <summary>Dots in rows, each row set over by half; some prints have a smaller dot between.</summary>
internal static class DotPrint
{
    public static void Draw(TileSketch tile)
    {
        var pitch = tile.Dice.Roll(16, 32) * 20;
        var radius = pitch * tile.Dice.Roll(13, 23) / 100;
        var between = tile.Dice.Roll(0, 3) == 0 ? radius / 3 : 0;
        (tile.Width, tile.Height) = (pitch, pitch);
        tile.Circle(pitch / 4, pitch / 4, radius, tile.Second);
        tile.Circle(pitch * 3 / 4, pitch * 3 / 4, radius, tile.Second);
        if (between > 0)
        {
            tile.Circle(pitch * 3 / 4, pitch / 4, between, tile.Second);
            tile.Circle(pitch / 4, pitch * 3 / 4, between, tile.Second);
        }
    }
}
