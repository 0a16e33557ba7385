using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Blocks;

/// <summary>An upright rectangle in units; a side runs counterclockwise: the right one up, the top one leftward.</summary>
internal readonly record struct Box(Rational Left, Rational Bottom, Rational Right, Rational Top)
{
    public bool IsEmpty => Left == Right || Bottom == Top;

    public Polygon Polygon() => Geometry.Polygon.Rectangle(Left, Bottom, Right, Top);

    public Box Including(Box other) =>
        new(
            Rational.Min(Left, other.Left),
            Rational.Min(Bottom, other.Bottom),
            Rational.Max(Right, other.Right),
            Rational.Max(Top, other.Top)
        );

    public Box Beside(LogSide side, Rational width) =>
        side switch
        {
            LogSide.Right => new(Right, Bottom, Right + width, Top),
            LogSide.Top => new(Left, Top, Right, Top + width),
            LogSide.Left => new(Left - width, Bottom, Left, Top),
            _ => new(Left, Bottom - width, Right, Bottom),
        };

    public Rational LengthAlong(LogSide side) => side is LogSide.Right or LogSide.Left ? Top - Bottom : Right - Left;

    /// <summary>A piece of a length from the first end of the side (or from its last), and the rest.</summary>
    public (Box Piece, Box Remainder) SplitAlong(LogSide side, Rational length, bool fromEnd = false)
    {
        // The low end of an axis is the first one of the right and the bottom side.
        var fromLow = side is LogSide.Right or LogSide.Bottom != fromEnd;
        return (side is LogSide.Right or LogSide.Left, fromLow) switch
        {
            (true, true) => (this with { Top = Bottom + length }, this with { Bottom = Bottom + length }),
            (true, false) => (this with { Bottom = Top - length }, this with { Top = Top - length }),
            (false, true) => (this with { Right = Left + length }, this with { Left = Left + length }),
            _ => (this with { Left = Right - length }, this with { Right = Right - length }),
        };
    }

    /// <summary>Counterclockwise; the edge from the first to the second corner is the inner one of a log on that side.</summary>
    public Point[] CornersFrom(LogSide side)
    {
        Point[] corners = [.. Polygon().Corners];
        // Inner edges run against the side: of a log on the right, from its upper to its lower left corner.
        var first = side switch
        {
            LogSide.Right => 3,
            LogSide.Top => 0,
            LogSide.Left => 1,
            _ => 2,
        };
        return [.. corners[first..], .. corners[..first]];
    }
}
