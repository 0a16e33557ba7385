using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// The seams between a border and what lies inside it, for tops with a border pieced from units: its seams may line up
/// with those of the blocks, and yet the border is sewn on as a whole.
/// </summary>
internal static class RingCuts
{
    /// <summary>Level seams first, so that top and bottom go on over the sides. Null where no border is pieced from units, or all lies in one.</summary>
    public static StraightCuts? Of(Region region)
    {
        var outermost = region.Items.Max(item => item.Ring);
        var inside = region.Items.Where(item => item.Ring < outermost).ToImmutableArray();
        // Coping strips have odd rings; they may lie at two sides only, and stop no seam there.
        if (inside.IsEmpty || (int.IsEvenInteger(outermost) && !region.Items.Any(item => item.InBorder && item.Block is not null)))
        {
            return null;
        }

        var (low, high) = new Region(inside).Bounds;
        return Between(region, new(1, 0), p => p.Y, low.Y, high.Y) ?? Between(region, new(0, -1), p => p.X, low.X, high.X);
    }

    private static StraightCuts? Between(Region region, Point step, Func<Point, Surd> level, Surd low, Surd high)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        var parts = ImmutableArray.CreateBuilder<Region>();
        var left = region.Items;
        foreach (var at in new[] { low, high })
        {
            var below = left.Where(item => level(item.Shape.Bounds().High) <= at).ToImmutableArray();
            if (below.IsEmpty || below.Length == left.Length)
            {
                continue;
            }

            left = left.RemoveRange(below);
            parts.Add(new(below));
            var from = step.X.IsZero ? new Point(at, 0) : new Point(0, at);
            lines.Add(new(from, from + step));
        }

        if (lines.Count == 0 || left.Any(item => lines.Any(line => Crosses(item, level, level(line.From)))))
        {
            return null;
        }

        parts.Add(new(left));
        return new(lines.ToImmutable(), parts.ToImmutable());
    }

    private static bool Crosses(Item item, Func<Point, Surd> level, Surd at)
    {
        var (low, high) = item.Shape.Bounds();
        return level(low) < at && level(high) > at;
    }
}
