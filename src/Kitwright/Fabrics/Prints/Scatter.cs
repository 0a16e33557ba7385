namespace Kitwright.Fabrics.Prints;

/// <summary>Spots tossed over a tile so that none comes near another, across the tile's edges too.</summary>
/// <remarks>Dart throwing as in Poisson-disk sampling (Cook, ACM TOG 5(1), 1986), with whole numbers.</remarks>
internal static class Scatter
{
    private const int Throws = 4000;

    public static List<TilePoint> Over(TileSketch tile, int apart, int most)
    {
        var spots = new List<TilePoint>();
        for (var i = 0; i < Throws && spots.Count < most; i++)
        {
            var spot = new TilePoint(tile.Dice.Roll(0, tile.Width), tile.Dice.Roll(0, tile.Height));
            if (spots.TrueForAll(other => Distance(tile, spot, other) >= (long)apart * apart))
            {
                spots.Add(spot);
            }
        }

        return spots;
    }

    /// <summary>Squared distance the short way round the tile.</summary>
    public static long Distance(TileSketch tile, TilePoint a, TilePoint b)
    {
        long dx = Math.Abs(a.X - b.X),
            dy = Math.Abs(a.Y - b.Y);
        dx = Math.Min(dx, tile.Width - dx);
        dy = Math.Min(dy, tile.Height - dy);
        return (dx * dx) + (dy * dy);
    }
}
