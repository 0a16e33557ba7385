using Kitwright.Geometry;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>A corner of a block, counterclockwise: a quarter turn takes each to the next.</summary>
public enum BlockCorner
{
    LowerLeft,
    LowerRight,
    UpperRight,
    UpperLeft,
}

/// <summary>Where the dark half of a block lies that is light and dark about a diagonal.</summary>
public static class DarkHalf
{
    /// <summary>
    /// The corner toward which the dark patches lie: that of their common center of area against the block's middle.
    /// Null where they lie evenly, or where the block has no dark or no light.
    /// </summary>
    /// <param name="value">Light or dark, by role; null for roles that are neither.</param>
    public static BlockCorner? Of(Block block, Func<string, Value?> value)
    {
        Surd x = 0,
            y = 0;
        var both = 0;
        foreach (var patch in block.Patches)
        {
            var sign = value(patch.Role) switch
            {
                Value.Dark => 1,
                Value.Light => -1,
                _ => 0,
            };
            both |= sign switch { 1 => 1, -1 => 2, _ => 0 };
            var (momentX, momentY) = SixfoldMoment(new Polygon(patch.Corners).CounterClockwise(), block);
            x += momentX * sign;
            y += momentY * sign;
        }

        return both == 3 && !x.IsZero && !y.IsZero
            ? (x.Sign > 0, y.Sign > 0) switch
            {
                (false, false) => BlockCorner.LowerLeft,
                (true, false) => BlockCorner.LowerRight,
                (true, true) => BlockCorner.UpperRight,
                _ => BlockCorner.UpperLeft,
            }
            : null;
    }

    // Six times the first moments of area about the block's middle, arcs taken as their chords.
    private static (Surd X, Surd Y) SixfoldMoment(Polygon shape, Block block)
    {
        var half = new Measure.Rational(1, 2);
        var middle = new Point(block.Width * half, block.Height * half);
        Surd x = 0,
            y = 0;
        for (var i = 0; i < shape.Corners.Length; i++)
        {
            Point p = shape.Corners[i] - middle,
                q = shape.Corners[(i + 1) % shape.Corners.Length] - middle;
            var cross = Point.Cross(p, q);
            x += (p.X + q.X) * cross;
            y += (p.Y + q.Y) * cross;
        }

        return (x, y);
    }
}
