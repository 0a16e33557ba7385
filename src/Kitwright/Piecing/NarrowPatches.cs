using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>What can be drawn and cut, but hardly sewn: patches narrower than their allowances, and seams shorter than one.</summary>
public static class NarrowPatches
{
    /// <summary>More inches than a coordinate as a double is ever off.</summary>
    private const double Apart = 1e-6;

    /// <summary>Notes on the patches of a block, by their path.</summary>
    public static IEnumerable<Finding> Of(BlockDesign block, Length seam)
    {
        foreach (var patch in block.Patches.Where(patch => IsNarrower(patch.Shape, Rational.One, seam * 2)))
        {
            yield return Finding.NoteOf("piecing.slender", patch.Id.Value, ("block", BlockName.BeforeBlock(block.Name)), ("seams", seam * 2));
        }

        // Most patches lie far apart, which their extents across tell at once.
        var spans = block.Patches.Select(patch => patch.Shape.Bounds()).Select(box => (Left: box.Low.X.ToDouble() - Apart, Right: box.High.X.ToDouble() + Apart)).ToArray();
        for (var i = 0; i < block.Patches.Length; i++)
        {
            for (var j = i + 1; j < block.Patches.Length; j++)
            {
                if (spans[i].Left > spans[j].Right || spans[j].Left > spans[i].Right)
                {
                    continue;
                }

                var (one, other) = (block.Patches[i], block.Patches[j]);
                if (Contacts.Between(one.Shape, other.Shape).Any(shared => IsShorter(shared.To - shared.From, seam)))
                {
                    yield return Finding.NoteOf("piecing.short-seam", one.Id.Value, ("block", BlockName.BeforeBlock(block.Name)), ("one", Number(one)), ("other", Number(other)), ("seam", seam));
                }
            }
        }
    }

    /// <summary>
    /// Whether a shape is nowhere as wide as a length. A shape is as wide as the narrowest band that holds it, and such a
    /// band lies along one of its sides.
    /// </summary>
    /// <param name="unit">Inches to one unit of the shape's coordinates.</param>
    public static bool IsNarrower(Polygon shape, Rational unit, Length than) =>
        Enumerable
            .Range(0, shape.Corners.Length)
            .Any(i =>
            {
                var from = shape.Corners[i];
                var side = shape.Corners[(i + 1) % shape.Corners.Length] - from;
                var across = shape.Corners.Select(c => Point.Cross(side, c - from)).ToList();
                // Twice an area: the band's width times the side's length.
                var band = (across.Max() - across.Min()) * unit;
                return band * band < Point.Dot(side, side) * (Surd)than * than;
            });

    private static bool IsShorter(Point step, Length than) => Point.Dot(step, step) < (Surd)than * than;

    private static string Number(Patch patch) => patch.Id.Value.Split('/')[^1];
}
