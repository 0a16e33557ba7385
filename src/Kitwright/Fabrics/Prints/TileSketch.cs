using System.Collections.Immutable;

namespace Kitwright.Fabrics.Prints;

/// <summary>A tile while it is drawn: size, colors, dice, and shapes that wrap round its edges.</summary>
internal sealed class TileSketch(Fabric fabric)
{
    private readonly ImmutableArray<TileShape>.Builder shapes = ImmutableArray.CreateBuilder<TileShape>();

    public Tint Ground { get; } = Tint.Parse(fabric.Color);
    public Tint Second { get; } = Tint.Parse(fabric.Print.Second);
    public SeededDice Dice { get; } = new(fabric.Print.Seed);

    /// <summary>Set before the first shape; a solid keeps one inch.</summary>
    public int Width { get; set; } = 1000;
    public int Height { get; set; } = 1000;

    public PrintTile Finish() => new(Width, Height, Ground.ToString(), shapes.ToImmutable());

    public void Circle(int x, int y, int radius, Tint color)
    {
        foreach (var (dx, dy) in Copies(x - radius, y - radius, x + radius, y + radius))
        {
            shapes.Add(new TileCircle(x + dx, y + dy, radius, color.ToString()));
        }
    }

    /// <summary>A rectangle inside the tile.</summary>
    public void Rectangle(int x, int y, int width, int height, Tint color) =>
        shapes.Add(new TileRectangle(x, y, width, height, color.ToString()));

    /// <summary>A closed path about a point, turned by steps of a 24th of a turn, its points given upright.</summary>
    public void Path(int x, int y, int turn, Tint color, TilePoint start, params ReadOnlySpan<TileCurve> curves)
    {
        var middle = new TilePoint(x, y);
        var first = Turn.Of(start, turn, middle);
        var turned = ImmutableArray.CreateBuilder<TileCurve>(curves.Length);
        int left = first.X,
            right = first.X,
            top = first.Y,
            bottom = first.Y;
        foreach (var curve in curves)
        {
            var next = new TileCurve(
                Turn.Of(curve.First, turn, middle),
                Turn.Of(curve.Second, turn, middle),
                Turn.Of(curve.End, turn, middle)
            );
            turned.Add(next);
            // A Bézier curve stays within its control points.
            foreach (var point in new[] { next.First, next.Second, next.End })
            {
                left = Math.Min(left, point.X);
                right = Math.Max(right, point.X);
                top = Math.Min(top, point.Y);
                bottom = Math.Max(bottom, point.Y);
            }
        }

        foreach (var (dx, dy) in Copies(left, top, right, bottom))
        {
            shapes.Add(
                new TilePath(
                    new(first.X + dx, first.Y + dy),
                    [.. turned.Select(c => new TileCurve(Moved(c.First, dx, dy), Moved(c.Second, dx, dy), Moved(c.End, dx, dy)))],
                    color.ToString()
                )
            );
        }
    }

    /// <summary>A petal or leaf from its foot at the point outward: pointed at both ends, widest in the middle.</summary>
    public void Blade(int x, int y, int turn, int length, int width, Tint color) =>
        Path(
            x,
            y,
            turn,
            color,
            new(0, 0),
            new TileCurve(new(width, -length / 4), new(width, -length * 3 / 4), new(0, -length)),
            new TileCurve(new(-width, -length * 3 / 4), new(-width, -length / 4), new(0, 0))
        );

    /// <summary>A petal that is round at its end.</summary>
    public void Petal(int x, int y, int turn, int length, int width, Tint color) =>
        Path(
            x,
            y,
            turn,
            color,
            new(0, 0),
            new TileCurve(new(width, -length / 5), new(width * 4 / 3, -length), new(0, -length)),
            new TileCurve(new(-width * 4 / 3, -length), new(-width, -length / 5), new(0, 0))
        );

    private static TilePoint Moved(TilePoint p, int dx, int dy) => new(p.X + dx, p.Y + dy);

    // The shape itself and its images by whole tiles, as far as they touch the tile.
    private IEnumerable<(int Dx, int Dy)> Copies(int left, int top, int right, int bottom)
    {
        for (var row = -1; row <= 1; row++)
        {
            for (var column = -1; column <= 1; column++)
            {
                int dx = column * Width,
                    dy = row * Height;
                if (left + dx < Width && right + dx > 0 && top + dy < Height && bottom + dy > 0)
                {
                    yield return (dx, dy);
                }
            }
        }
    }
}
