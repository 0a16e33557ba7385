using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CsCheck;
using Kitwright.Fabrics;
using Kitwright.Fabrics.Prints;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Fabrics;

public sealed class PrintTileTest
{
    private static readonly Gen<Fabric> AnyFabric =
        from kind in Gen.Enum<PrintKind>()
        from seed in Gen.Int
        from color in Gen.Int[0, 0xffffff]
        from second in Gen.Int[0, 0xffffff]
        select Make(kind, seed, $"#{color:x6}", $"#{second:x6}");

    private static Fabric Make(PrintKind kind, int seed, string color = "#1f5468", string second = "#f0b48f") =>
        new("F1", "Fabric", Length.Inches(44), 1200, color, new(kind, second, seed));

    // A print without a visible join: whatever reaches over an edge stands again one tile further on.
    [Fact]
    public void What_crosses_an_edge_stands_at_the_opposite_one() =>
        AnyFabric.Sample(
            fabric =>
            {
                var tile = PrintTile.Of(fabric);
                var there = tile.Shapes.ToHashSet();
                foreach (var shape in tile.Shapes)
                {
                    foreach (var (dx, dy) in Neighbors(tile))
                    {
                        var moved = Moved(shape, dx, dy);
                        var (left, top, right, bottom) = Bounds(moved);
                        var shows = left < tile.Width && right > 0 && top < tile.Height && bottom > 0;
                        Assert.True(!shows || there.Contains(moved), $"{shape} is missing at {dx}, {dy}");
                    }
                }
            },
            iter: 40
        );

    [Fact]
    public void Same_fabric_same_tile_and_other_seed_other_tile() =>
        AnyFabric.Sample(
            fabric =>
            {
                Assert.Equal(Text(PrintTile.Of(fabric)), Text(PrintTile.Of(fabric)));
                if (fabric.Print.Kind is PrintKind.Tonal or PrintKind.SmallFloral or PrintKind.LargeFloral)
                {
                    var other = fabric with { Print = fabric.Print with { Seed = unchecked(fabric.Print.Seed + 1) } };
                    Assert.NotEqual(Text(PrintTile.Of(fabric)), Text(PrintTile.Of(other)));
                }
            },
            iter: 20
        );

    // Recorded once: a change means that every demo picture and printed booklet changes.
    [Fact]
    public void Prints_are_the_same_on_every_machine()
    {
        var all = string.Join('\n', Enum.GetValues<PrintKind>().Select(kind => Text(PrintTile.Of(Make(kind, 7)))));
        var digest = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)));
        Assert.Equal("d56c4b94d658d41f952d0eba5cf3a231ab6d5829088fed1a13cda8f913672783", digest);
    }

    [Fact]
    public void Solid_is_one_color() => Assert.Empty(PrintTile.Of(Make(PrintKind.Solid, 3)).Shapes);

    [Theory]
    [InlineData("red")]
    [InlineData("")]
    [InlineData("#12345g")]
    public void Unreadable_color_is_gray(string color) =>
        Assert.Equal("#808080", PrintTile.Of(Make(PrintKind.Solid, 1, color)).Background);

    private static IEnumerable<(int Dx, int Dy)> Neighbors(PrintTile tile) =>
        from row in Enumerable.Range(-1, 3)
        from column in Enumerable.Range(-1, 3)
        where row != 0 || column != 0
        select (column * tile.Width, row * tile.Height);

    private static TileShape Moved(TileShape shape, int dx, int dy)
    {
        TilePoint Move(TilePoint p) => new(p.X + dx, p.Y + dy);
        return shape switch
        {
            TileCircle c => c with { X = c.X + dx, Y = c.Y + dy },
            TileRectangle r => r with { X = r.X + dx, Y = r.Y + dy },
            TilePath p => new TilePath(Move(p.Start), [.. p.Curves.Select(c => new TileCurve(Move(c.First), Move(c.Second), Move(c.End)))], p.Color),
            _ => throw new InvalidOperationException(shape.ToString()),
        };
    }

    private static (int Left, int Top, int Right, int Bottom) Bounds(TileShape shape)
    {
        switch (shape)
        {
            case TileCircle c:
                return (c.X - c.Radius, c.Y - c.Radius, c.X + c.Radius, c.Y + c.Radius);
            case TileRectangle r:
                return (r.X, r.Y, r.X + r.Width, r.Y + r.Height);
            default:
                var path = (TilePath)shape;
                TilePoint[] points = [path.Start, .. path.Curves.SelectMany(c => new[] { c.First, c.Second, c.End })];
                return (points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
        }
    }

    private static string Text(PrintTile tile)
    {
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"{tile.Width} {tile.Height} {tile.Background}"));
        foreach (var shape in tile.Shapes)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"\n{(shape is TilePath path ? $"{path.Start} {string.Join(' ', path.Curves)} {path.Color}" : shape)}"
            );
        }

        return text.ToString();
    }
}
