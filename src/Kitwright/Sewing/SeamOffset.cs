using System.Collections.Immutable;
using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>A seam allowance round a patch, for drawing.</summary>
public static class SeamOffset
{
    /// <summary>
    /// Parallel to each edge at the allowance; where two edges meet at less than a right angle the point is blunted a
    /// seam allowance beyond the corner, square to the line that halves it, so that edges match when two patches are laid
    /// together (common practice, no source).
    /// </summary>
    /// <param name="line">Counterclockwise.</param>
    public static ImmutableArray<Spot> Of(ImmutableArray<Spot> line, double seam)
    {
        var cut = ImmutableArray.CreateBuilder<Spot>();
        for (var i = 0; i < line.Length; i++)
        {
            var at = line[i];
            Spot arriving = (at - line[(i + line.Length - 1) % line.Length]).Unit,
                leaving = (line[(i + 1) % line.Length] - at).Unit,
                before = arriving.Left * -1,
                after = leaving.Left * -1;
            var together = Spot.Dot(before, after);
            if (together > -Spot.Near || Spot.Cross(arriving, leaving) < 0)
            {
                cut.Add(at + ((before + after) * (seam / (1 + together))));
                continue;
            }

            var half = (before + after).Unit;
            var beyond = seam * (1 - Spot.Dot(before, half)) / Spot.Dot(arriving, half);
            cut.Add(at + (before * seam) + (arriving * beyond));
            cut.Add(at + (after * seam) - (leaving * beyond));
        }

        return cut.ToImmutable();
    }
}
