namespace Kitwright.Fabrics.Prints;

/// <summary>Flowers of petals about a center, with leaves, tossed over the ground.</summary>
internal static class FloralPrint
{
    public static void DrawSmall(TileSketch tile)
    {
        (tile.Width, tile.Height) = (3000, 3000);
        var leaf = LeafOn(tile.Ground, tile.Second);
        var heart = HeartOf(tile.Second);
        var pale = tile.Second.Mix(tile.Ground, 35);
        var spots = Scatter.Over(tile, 410, 44);
        for (var i = 0; i < spots.Count; i++)
        {
            var turn = tile.Dice.Roll(0, Turn.Steps);
            if (i % 3 == 2)
            {
                Sprig(tile, spots[i], turn, 150, leaf, pale);
            }
            else
            {
                var length = tile.Dice.Roll(120, 160);
                tile.Blade(spots[i].X, spots[i].Y, turn + 5, length * 8 / 5, length * 2 / 5, leaf);
                tile.Blade(spots[i].X, spots[i].Y, turn - 7, length * 8 / 5, length * 2 / 5, leaf);
                Flower(tile, spots[i], turn, 5, length, length * 3 / 5, i % 2 == 0 ? tile.Second : pale);
                tile.Circle(spots[i].X, spots[i].Y, length * 3 / 10, heart);
            }
        }
    }

    public static void DrawLarge(TileSketch tile)
    {
        (tile.Width, tile.Height) = (9000, 9000);
        var leaf = LeafOn(tile.Ground, tile.Second);
        var leafDim = leaf.Mix(tile.Ground, 40);
        var pale = tile.Second.Mix(tile.Ground, 45);
        var deep = tile.Second.Mix(Tint.Black, 25);
        var heart = HeartOf(tile.Second);
        var blooms = Scatter.Over(tile, 2150, 12);
        foreach (var spot in blooms)
        {
            var turn = tile.Dice.Roll(0, Turn.Steps);
            for (var i = 0; i < 5; i++)
            {
                var side = turn + (i * 5) + tile.Dice.Roll(-1, 2);
                tile.Blade(spot.X, spot.Y, side, 1450, 380, i % 2 == 0 ? leaf : leafDim);
                tile.Blade(spot.X, spot.Y, side, 1300, 45, i % 2 == 0 ? leafDim : leaf);
            }

            var size = tile.Dice.Roll(760, 980);
            Flower(tile, spot, turn, 8, size, size * 2 / 5, pale);
            Flower(tile, spot, turn + 1, 8, size * 3 / 4, size * 3 / 10, tile.Second);
            Flower(tile, spot, turn, 6, size * 9 / 20, size / 5, deep);
            tile.Circle(spot.X, spot.Y, size / 6, heart);
        }

        // Small blossoms fill the ground that the blooms leave free.
        foreach (var spot in Scatter.Over(tile, 620, 90).Where(s => blooms.TrueForAll(b => Scatter.Distance(tile, s, b) > 1350L * 1350)))
        {
            var turn = tile.Dice.Roll(0, Turn.Steps);
            if (tile.Dice.Roll(0, 2) == 0)
            {
                Sprig(tile, spot, turn, 300, leafDim, pale);
            }
            else
            {
                Flower(tile, spot, turn, 5, 220, 130, pale);
                tile.Circle(spot.X, spot.Y, 62, heart);
            }
        }
    }

    private static void Flower(TileSketch tile, TilePoint at, int turn, int petals, int length, int width, Tint color)
    {
        for (var i = 0; i < petals; i++)
        {
            tile.Petal(at.X, at.Y, turn + (i * Turn.Steps / petals), length, width, color);
        }
    }

    private static void Sprig(TileSketch tile, TilePoint at, int turn, int length, Tint leaf, Tint bud)
    {
        tile.Blade(at.X, at.Y, turn + 4, length, length * 3 / 10, leaf);
        tile.Blade(at.X, at.Y, turn - 4, length, length * 3 / 10, leaf);
        tile.Blade(at.X, at.Y, turn, length * 6 / 5, length / 10, leaf);
        var tip = Turn.Of(new(0, -length * 6 / 5), turn, at);
        tile.Circle(tip.X, tip.Y, length * 3 / 10, bud);
    }

    // A leaf that shows on its ground: darker on light cloth, lighter on dark.
    private static Tint LeafOn(Tint ground, Tint flower)
    {
        var leaf = Tint.Leaf.Mix(ground, 20).Mix(flower, 10);
        return ground.Luma > 120 ? leaf : leaf.Mix(Tint.White, 30);
    }

    private static Tint HeartOf(Tint flower) =>
        flower.Luma > 170 ? Tint.Pollen.Mix(flower, 10) : Tint.Pollen.Mix(Tint.White, 35);
}
