using Kitwright.Geometry;

namespace Kitwright.Quilts.Partitions;

/// <summary>
/// Bounds in doubles, widened by far more than doubles err: what is apart here is apart, and all else is decided exactly.
/// </summary>
internal readonly record struct Reach(double Left, double Bottom, double Right, double Top)
{
    private const double Near = 1e-6;

    public static Reach Of(Edge edge)
    {
        if (edge.Center is { } center)
        {
            double x = center.X.ToDouble(),
                y = center.Y.ToDouble(),
                radius = Math.Sqrt(edge.RadiusSquared.ToDouble()) + Near;
            return new(x - radius, y - radius, x + radius, y + radius);
        }

        return Of([edge.From, edge.To]);
    }

    public static Reach Of(IEnumerable<Point> points)
    {
        var reach = new Reach(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var point in points)
        {
            double x = point.X.ToDouble(),
                y = point.Y.ToDouble();
            reach = new(
                Math.Min(reach.Left, x - Near),
                Math.Min(reach.Bottom, y - Near),
                Math.Max(reach.Right, x + Near),
                Math.Max(reach.Top, y + Near)
            );
        }

        return reach;
    }

    public Reach And(Reach other) =>
        new(Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    public bool Meets(Reach other) =>
        Left <= other.Right && other.Left <= Right && Bottom <= other.Top && other.Bottom <= Top;
}
