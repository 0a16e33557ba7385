using Kitwright.Pressing;
using Kitwright.Quilts;

namespace Kitwright.Sewing;

/// <summary>
/// Where a curved seam is pinned: at corners of other patches on the curve, or else at its middle, and at its quarters
/// where it is long. Both patches along a curve get the same places.
/// </summary>
internal static class ArcMarks
{
    /// <summary>Shorter curves, in inches, are pinned at their ends and in the middle.</summary>
    private const double LongArc = 4;

    private const double Near = 1e-6;

    /// <summary>Places on the patch's arcs, with the center that each is seen from.</summary>
    public static IEnumerable<(Spot At, Spot Center)> Of(BlockPatch patch, IReadOnlyCollection<Spot> corners)
    {
        foreach (var arc in patch.Arcs)
        {
            Spot from = Spot.Of(patch.Corners[arc.Edge]),
                to = Spot.Of(patch.Corners[(arc.Edge + 1) % patch.Corners.Length]),
                center = Spot.Of(arc.Center);
            var radius = (from - center).Length;
            var turn = Turn(from - center, to - center, arc.Clockwise);
            var met = corners.Where(c => Math.Abs((c - center).Length - radius) < Near && Turn(from - center, c - center, arc.Clockwise) is > Near and var at && at < turn - Near).ToArray();
            double[] shares = radius * turn < LongArc ? [0.5] : [0.25, 0.5, 0.75];
            foreach (var at in met.Length > 0 ? met : shares.Select(share => center + Turned(from - center, arc.Clockwise ? -share * turn : share * turn)))
            {
                yield return (at, center);
            }
        }
    }

    /// <summary>A mark there, away from the patch whose sewing line this is, counterclockwise.</summary>
    public static TemplateMark On(IReadOnlyList<Spot> line, Spot at, Spot center)
    {
        var edge = Enumerable.Range(0, line.Count).MinBy(i => (((line[i] + line[(i + 1) % line.Count]) * 0.5) - at).Length);
        var outward = (line[(edge + 1) % line.Count] - line[edge]).Unit.Left * -1;
        var radial = (at - center).Unit;
        return new(at, Spot.Dot(outward, radial) > 0 ? radial : radial * -1);
    }

    /// <summary>From one direction to another, in radians, 0 to 2π.</summary>
    private static double Turn(Spot from, Spot to, bool clockwise)
    {
        var turn = Math.Atan2(Spot.Cross(from, to), Spot.Dot(from, to)) * (clockwise ? -1 : 1);
        return turn < -Near ? turn + (2 * Math.PI) : Math.Max(0, turn);
    }

    private static Spot Turned(Spot step, double by)
    {
        var (sin, cos) = Math.SinCos(by);
        return new((step.X * cos) - (step.Y * sin), (step.X * sin) + (step.Y * cos));
    }
}
