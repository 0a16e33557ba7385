using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>The patches of one border round a rectangle.</summary>
internal static class BorderRing
{
    /// <param name="number">1 for the innermost; ids are <c>frame/border/N/left</c> and so on.</param>
    public static IEnumerable<Patch> Lay(Border border, int number, Frame inner)
    {
        var outer = inner.Grown(border.Width);
        return border.Style switch
        {
            BorderStyle.Butted => Butted(border, number, inner, outer),
            BorderStyle.CornerSquares => CornerSquares(border, number, inner, outer),
            _ => Mitered(border, number, inner, outer),
        };
    }

    private static Patch Strip(Border border, int number, string side, Polygon shape) =>
        new(new($"frame/border/{number}/{side}"), border.Role, shape);

    private static IEnumerable<Patch> Sides(Border border, int number, Frame inner, Frame outer) =>
        [
            Strip(border, number, "left", new Frame(outer.Left, inner.Bottom, inner.Left, inner.Top).Polygon()),
            Strip(border, number, "right", new Frame(inner.Right, inner.Bottom, outer.Right, inner.Top).Polygon()),
        ];

    private static IEnumerable<Patch> Butted(Border border, int number, Frame inner, Frame outer) =>
        [
            .. Sides(border, number, inner, outer),
            Strip(border, number, "top", new Frame(outer.Left, inner.Top, outer.Right, outer.Top).Polygon()),
            Strip(border, number, "bottom", new Frame(outer.Left, outer.Bottom, outer.Right, inner.Bottom).Polygon()),
        ];

    private static IEnumerable<Patch> CornerSquares(Border border, int number, Frame inner, Frame outer)
    {
        return
        [
            .. Sides(border, number, inner, outer),
            Strip(border, number, "top", new Frame(inner.Left, inner.Top, inner.Right, outer.Top).Polygon()),
            Strip(border, number, "bottom", new Frame(inner.Left, outer.Bottom, inner.Right, inner.Bottom).Polygon()),
            .. Corners(border.Corner ?? border.Role, number, inner, outer),
        ];
    }

    public static IEnumerable<Patch> Corners(string role, int number, Frame inner, Frame outer)
    {
        Patch Square(string place, Frame frame) => new(new($"frame/border/{number}/corner/{place}"), role, frame.Polygon());
        return
        [
            Square("top-left", new(outer.Left, inner.Top, inner.Left, outer.Top)),
            Square("top-right", new(inner.Right, inner.Top, outer.Right, outer.Top)),
            Square("bottom-left", new(outer.Left, outer.Bottom, inner.Left, inner.Bottom)),
            Square("bottom-right", new(inner.Right, outer.Bottom, outer.Right, inner.Bottom)),
        ];
    }

    private static IEnumerable<Patch> Mitered(Border border, int number, Frame inner, Frame outer)
    {
        Polygon from = outer.Polygon(),
            to = inner.Polygon();
        // Corners run counterclockwise from the lower left, so side i lies between corners i and i + 1.
        string[] sides = ["bottom", "right", "top", "left"];
        return sides.Select(
            (side, i) =>
            {
                var next = (i + 1) % sides.Length;
                return Strip(border, number, side, new([from.Corners[i], from.Corners[next], to.Corners[next], to.Corners[i]]));
            }
        );
    }
}
