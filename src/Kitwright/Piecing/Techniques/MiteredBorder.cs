using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing.Techniques;

/// <summary>
/// A border whose strips meet at 45 degrees: each is cut as long as the outer edge and several inches more, sewn to its
/// side from corner to corner, and the ends are sewn to one another on the slant ([APQ-MIT], [QH370]).
/// </summary>
/// <param name="Center">What the border goes round.</param>
/// <param name="Sides">Left, right, bottom, top.</param>
internal sealed record MiteredBorder(Region Center, ImmutableArray<Item> Sides)
{
    public const string Kind = "mitered";

    /// <summary>The strip is the side, two border widths and this, seam allowances included ([APQ-MIT], [QH370]).</summary>
    public static readonly Length Over = Length.Inches(6);

    public static MiteredBorder? Of(Region region)
    {
        var outermost = region.Items.Max(item => item.Border);
        if (outermost == 0)
        {
            return null;
        }

        var sides = region.Items.Where(item => item.Border == outermost).ToImmutableArray();
        var center = region.Items.RemoveRange(sides);
        if (sides.Length != 4 || center.IsEmpty || sides.Any(side => side.Shape.Corners.Length != 4 || Shapes.IsRectangle(side.Shape)))
        {
            return null;
        }

        // Of the four middles one lies furthest to each side.
        Item Furthest(Func<Point, Surd> way) => sides.MaxBy(side => side.Shape.Corners.Aggregate(Surd.Zero, (sum, c) => sum + way(c)))!;
        return new(new(center), [Furthest(p => -p.X), Furthest(p => p.X), Furthest(p => -p.Y), Furthest(p => p.Y)]);
    }

    /// <param name="place">Puts a part into a register; answers its id, or null where it cannot be made.</param>
    public Program? Make(Func<List<Verb>, string, Region, PathId?> place, Seams seams)
    {
        var verbs = new List<Verb>();
        if (place(verbs, "unit", Center) is not { } center)
        {
            return null;
        }

        var (low, high) = Center.Bounds;
        var parts = ImmutableArray.CreateBuilder<UnitPart>();
        parts.Add(new(center, Polygon.Rectangle(low.X, low.Y, high.X, high.Y)));
        // From each corner of the center to the next, so that the border lies to the left.
        Point bottomLeft = low,
            bottomRight = new(high.X, low.Y),
            topRight = high,
            topLeft = new(low.X, high.Y);
        (Point From, Point To)[] seam = [(bottomLeft, topLeft), (topRight, bottomRight), (bottomRight, bottomLeft), (topLeft, topRight)];
        for (var i = 0; i < seam.Length; i++)
        {
            var (from, to) = seam[i];
            var side = Sides[i];
            var slants = Slants(side.Shape, from, to);
            if (place(verbs, "strip", Strip(side, from, to, seams)) is not { } strip)
            {
                return null;
            }

            foreach (var slant in slants)
            {
                verbs.Add(new CutAlong("strip", Outward(slant, seams.Allowance), "strip", null));
            }

            // The first two sides find nothing to meet at their ends; the last two are set in between them.
            ImmutableArray<Line> lines = i < 2 ? [new(from, to)] : [slants[0], new(from, to), slants[1]];
            verbs.Add(new SewIn("unit", "strip", lines, PressToward.Top));
            parts.Add(new(strip, side.Shape));
        }

        return new(Kind, [.. verbs], ["unit"], Message.Of("unit.mitered")) { Parts = parts.ToImmutable() };
    }

    /// <summary>The slanting ends, in the direction in which the strip lies to the left: in to the corner, out again.</summary>
    private static Line[] Slants(Polygon shape, Point from, Point to)
    {
        var outer = shape.Corners.Where(corner => corner != from && corner != to).ToArray();
        var along = to - from;
        var atFrom = outer.MinBy(corner => Point.Dot(corner, along));
        var atTo = outer.MaxBy(corner => Point.Dot(corner, along));
        return [new(atFrom, from), new(to, atTo)];
    }

    /// <summary>The line shifted by the seam allowance to its right; it runs at 45 degrees.</summary>
    private static Line Outward(Line line, Length seam)
    {
        var step = line.Step;
        var away = new Point(step.Y, -step.X) * ((Surd.OfRoot2(new(1, 2)) * seam) / Abs(step.X));
        return new(line.From + away, line.To + away);
    }

    private static Surd Abs(Surd x) => x.Sign < 0 ? -x : x;

    /// <summary>The strip as it is cut, less its allowances: as far beyond the outer corners at one end as at the other.</summary>
    private static Region Strip(Item side, Point from, Point to, Seams seams)
    {
        var (low, high) = side.Shape.Bounds();
        // One that is cut along the selvage has a reserve of its own.
        var over = (Surd)(((side.Lengthwise ? Over - LengthwiseStrip.Over : Over) - seams.Both) / 2);
        var upright = from.X == to.X;
        Surd wider = upright ? 0 : over,
            higher = upright ? over : 0;
        return new([side with { Shape = Polygon.Rectangle(low.X - wider, low.Y - higher, high.X + wider, high.Y + higher) }]);
    }
}
