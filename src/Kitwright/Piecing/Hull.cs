using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>The convex outline of a region that straight seams have cut out (Andrew's monotone chain, exact).</summary>
internal static class Hull
{
    public static Polygon Of(Region region) => Of(region.Items.SelectMany(i => i.Shape.Corners));

    public static Polygon Of(IEnumerable<Point> corners)
    {
        Point[] points = [.. corners];
        Array.Sort(points, InOrder);
        var chain = new List<Point>();
        AddChain(chain, points, 0);
        AddChain(chain, points.Reverse(), chain.Count);
        return new([.. chain]);
    }

    private static int InOrder(Point one, Point other) => one.X.CompareTo(other.X) is var across and not 0 ? across : one.Y.CompareTo(other.Y);

    /// <summary>Adds one half of the outline, without its last point, which begins the other half.</summary>
    private static void AddChain(List<Point> chain, IEnumerable<Point> points, int start)
    {
        foreach (var point in points)
        {
            // Neighbors share their corners.
            if (chain.Count > start && chain[^1] == point)
            {
                continue;
            }

            while (chain.Count >= start + 2 && Point.Cross(chain[^1] - chain[^2], point - chain[^1]).Sign <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        chain.RemoveAt(chain.Count - 1);
    }
}
