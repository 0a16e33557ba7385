using Kitwright.Measure;

namespace Kitwright.Geometry;

/// <summary>An exact point, or a step between two points, in inches; x to the right, y up.</summary>
/// <remarks>Equality is by coordinates; <c>default</c> is the origin.</remarks>
public readonly record struct Point(Surd X, Surd Y)
{
    public static Point Origin => default;

    public static Point operator +(Point p, Point q) => new(p.X + q.X, p.Y + q.Y);

    public static Point operator -(Point p, Point q) => new(p.X - q.X, p.Y - q.Y);

    public static Point operator -(Point p) => new(-p.X, -p.Y);

    public static Point operator *(Point p, Surd factor) => new(p.X * factor, p.Y * factor);

    public static Surd Dot(Point p, Point q) => (p.X * q.X) + (p.Y * q.Y);

    /// <summary>Twice the signed area between two steps; positive where q lies to the left of p.</summary>
    public static Surd Cross(Point p, Point q) => (p.X * q.Y) - (p.Y * q.X);

    public override string ToString() => $"({X}, {Y})";
}

/// <summary>A directed straight line through two different points.</summary>
/// <remarks>
/// Equality is by the two points, not by the set of points on the line. <c>default</c> is no line (both points are the
/// origin): every point lies on it.
/// </remarks>
public readonly record struct Line(Point From, Point To)
{
    public Point Step => To - From;

    /// <summary>1 to the left of the direction, −1 to the right, 0 on the line; exact.</summary>
    public int SideOf(Point point) => Point.Cross(To - From, point - From).Sign;

    public Line Reversed => new(To, From);

    public override string ToString() => $"{From} to {To}";
}
