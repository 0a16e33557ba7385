namespace Kitwright.Fabrics.Prints;

/// <summary>Tone on tone: sprigs of three leaves, tossed, near the color of the ground.</summary>
internal static class TonalPrint
{
    public static void Draw(TileSketch tile)
    {
        (tile.Width, tile.Height) = (2400, 2400);
        var faint = tile.Ground.Mix(tile.Second, 55);
        foreach (var spot in Scatter.Over(tile, 300, 60))
        {
            var turn = tile.Dice.Roll(0, Turn.Steps);
            var length = tile.Dice.Roll(130, 190);
            tile.Blade(spot.X, spot.Y, turn, length, length / 3, tile.Second);
            tile.Blade(spot.X, spot.Y, turn + 7, length * 3 / 4, length / 4, faint);
            tile.Blade(spot.X, spot.Y, turn - 7, length * 3 / 4, length / 4, faint);
        }
    }
}
