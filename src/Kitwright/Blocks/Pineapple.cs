using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Blocks;

/// <summary>
/// Draws a pineapple: round an octagon, four straight strips and four diagonal ones of equal width in turn, exact in
/// √2; triangles fill the corners.
/// </summary>
internal static class Pineapple
{
    public static BookBlock Draw(string id, string name, string? source, PineapplePlan plan)
    {
        var patches = new List<(string, ImmutableArray<Point>)>();
        // Straight edges at |x| = s or |y| = s; diagonal edges at |x| + |y| = t, whose distance is t/√2.
        Rational s = plan.Center / 2;
        Surd t = plan.Center;
        patches.Add(("center", Polygon.Rectangle(-s, -s, s, s).Corners));
        for (var round = 1; round <= plan.Rounds; round++)
        {
            var wide = s + plan.Strip;
            var inner = Least(s, t - s);
            AddFourTimes(patches, "straight", (s, -inner), (wide, wide - t), (wide, t - wide), (s, inner));
            s = wide;
            var next = t + Surd.OfRoot2(plan.Strip);
            AddFourTimes(patches, "diagonal", (s, t - s), (s, next - s), (next - s, s), (t - s, s));
            t = next;
        }

        AddFourTimes(patches, "corner", (s, t - s), (s, s), (t - s, s));
        return Drawing.Finish(id, name, BlockFamily.LogCabin, source, new(-s, -s, s, s), patches);
    }

    private static Surd Least(Surd x, Surd y) => x <= y ? x : y;

    private static void AddFourTimes(
        List<(string, ImmutableArray<Point>)> patches,
        string role,
        params ReadOnlySpan<(Surd X, Surd Y)> corners
    )
    {
        for (var turns = 0; turns < 4; turns++)
        {
            var turn = Motion.QuarterTurns(turns);
            var turned = ImmutableArray.CreateBuilder<Point>(corners.Length);
            foreach (var (x, y) in corners)
            {
                turned.Add(turn.Apply(new Point(x, y)));
            }

            patches.Add((role, turned.ToImmutable()));
        }
    }
}
