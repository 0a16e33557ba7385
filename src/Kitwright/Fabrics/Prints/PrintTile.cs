using System.Collections.Immutable;

namespace Kitwright.Fabrics.Prints;

/// <summary>
/// One repeat of a print at true scale, as shapes: laid side by side it covers cloth without a visible join.
/// </summary>
/// <remarks>
/// Measures are whole thousandths of an inch, x to the right, y down, from the tile's upper left corner; down is the
/// length of the fabric. Shapes are in painting order and are clipped to the tile: what crosses an edge stands again
/// at the opposite one. The same fabric gives the same tile on every machine: no floating point is involved.
/// </remarks>
/// <param name="Width">In thousandths of an inch.</param>
/// <param name="Background">"#rrggbb".</param>
public sealed record PrintTile(int Width, int Height, string Background, ImmutableArray<TileShape> Shapes)
{
    public static PrintTile Of(Fabric fabric)
    {
        var draw = new TileSketch(fabric);
        switch (fabric.Print.Kind)
        {
            case PrintKind.Solid:
                break;
            case PrintKind.Tonal:
                TonalPrint.Draw(draw);
                break;
            case PrintKind.Dots:
                DotPrint.Draw(draw);
                break;
            case PrintKind.Stripe:
                StripePrint.Draw(draw);
                break;
            case PrintKind.Check:
                CheckPrint.Draw(draw);
                break;
            case PrintKind.SmallFloral:
                FloralPrint.DrawSmall(draw);
                break;
            case PrintKind.LargeFloral:
                FloralPrint.DrawLarge(draw);
                break;
        }

        return draw.Finish();
    }
}

/// <summary>One shape of a tile, filled with one color "#rrggbb".</summary>
public abstract record TileShape(string Color);

public sealed record TileCircle(int X, int Y, int Radius, string Color) : TileShape(Color);

public sealed record TileRectangle(int X, int Y, int Width, int Height, string Color) : TileShape(Color);

/// <summary>A closed path of cubic Bézier curves, one after the other.</summary>
public sealed record TilePath(TilePoint Start, ImmutableArray<TileCurve> Curves, string Color) : TileShape(Color)
{
    public bool Equals(TilePath? other) =>
        other is not null && Start == other.Start && Color == other.Color && Curves.SequenceEqual(other.Curves);

    public override int GetHashCode() => HashCode.Combine(Start, Color, Curves.Length);
}

public readonly record struct TilePoint(int X, int Y);

/// <summary>From where the last curve ended to <paramref name="End"/>, by two control points.</summary>
public readonly record struct TileCurve(TilePoint First, TilePoint Second, TilePoint End);
