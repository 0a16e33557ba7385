using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>The convex outline of a region that straight seams have cut out (Andrew's monotone chain, exact).</summary>
internal static class Hull
{
    public static Polygon Of(Region region)
    {
        var points = region.Items.SelectMany(i => i.Shape.Corners).Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        var chain = new List<Point>();
        AddChain(chain, points, 0);
        AddChain(chain, points.Reverse(), chain.Count);
        return new([.. chain]);
    }

    /// <summary>Adds one half of the outline, without its last point, which begins the other half.</summary>
    private static void AddChain(List<Point> chain, IEnumerable<Point> points, int start)
    {
        foreach (var point in points)
        {
            while (chain.Count >= start + 2 && Point.Cross(chain[^1] - chain[^2], point - chain[^1]).Sign <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        chain.RemoveAt(chain.Count - 1);
    }
}
