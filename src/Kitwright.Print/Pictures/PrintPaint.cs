using Kitwright.Fabrics;
using Kitwright.Fabrics.Prints;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>A fabric's print as paint: its tile, from thousandths of an inch to inches.</summary>
public static class PrintPaint
{
    private const double Thousandth = 0.001;

    /// <summary>A solid is flat; every other print repeats.</summary>
    public static Paint Of(Fabric fabric)
    {
        var tile = PrintTile.Of(fabric);
        var ground = Color.Parse(tile.Background);
        return tile.Shapes.IsEmpty
            ? Paint.Of(ground)
            : new TilePaint(
                KeyOf(fabric.Number),
                ground,
                tile.Width * Thousandth,
                tile.Height * Thousandth,
                [.. tile.Shapes.Select(shape => new Shape(OutlineOf(shape), Paint.Of(Color.Parse(shape.Color)), null))]
            );
    }

    // Stock numbers are free text; the key of a pattern is not.
    private static string KeyOf(string number) => "print-" + Convert.ToHexStringLower(System.Text.Encoding.UTF8.GetBytes(number));

    private static Outline OutlineOf(TileShape shape) =>
        shape switch
        {
            TileCircle circle => Outline.Circle(Inches(circle.X, circle.Y), circle.Radius * Thousandth),
            TileRectangle rectangle => Outline.Rectangle(
                new(rectangle.X * Thousandth, rectangle.Y * Thousandth, rectangle.Width * Thousandth, rectangle.Height * Thousandth)
            ),
            TilePath path => new(
                [
                    new(
                        Inches(path.Start),
                        [.. path.Curves.Select(curve => new Segment(Inches(curve.First), Inches(curve.Second), Inches(curve.End), Curve: true))],
                        Closed: true
                    ),
                ]
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(shape)),
        };

    private static Place Inches(TilePoint point) => Inches(point.X, point.Y);

    private static Place Inches(int x, int y) => new(x * Thousandth, y * Thousandth);
}
