using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// The hidden allowance of one layer: at least a seam wide along the whole visible seam. At an end it may lose the
/// corner that the layer's own raw edge cuts off, as long as that edge does not lean too far along the seam.
/// </summary>
internal static class Allowance
{
    /// <summary>
    /// How far along the seam an edge may lean, for each inch it goes away from it: 5/2 admits points down to 22 1/2
    /// degrees (cotangent 1 + √2 = 2.414).
    /// </summary>
    private static readonly Rational GreatestLean = new(5, 2);

    public static Finding? Check(Layer layer, Spans shown, Length seam, string place)
    {
        foreach (var (from, to) in shown.Parts)
        {
            var needed = Needed(layer, from, to, seam);
            if (needed is null)
            {
                continue;
            }

            var covered = Surd.Zero;
            foreach (var face in layer.Hidden)
            {
                covered += needed.Within(face.Shape)?.TwiceArea ?? Surd.Zero;
            }

            if (covered != needed.TwiceArea)
            {
                return Finding.Of("check.sewing.allowance", place, ("seam", seam)) with
                {
                    Measured = Widest(layer),
                    Expected = Say.AtLeast(Say.Inches(seam)),
                };
            }
        }

        return null;
    }

    /// <summary>The band beside the seam that cloth must fill, in the faces' coordinates.</summary>
    private static Shape? Needed(Layer layer, Surd from, Surd to, Length seam)
    {
        var step = layer.Own.To - layer.Own.From;
        var square = (step.X * step.X) + (step.Y * step.Y);
        Surd deep = (Surd)seam / Roots.Length(step);
        Point start = layer.Own.From + (step * (from / square)),
            end = layer.Own.From + (step * (to / square)),
            away = new(layer.Beyond.A * deep, layer.Beyond.B * deep);
        Shape? band = new(start, end, end + away, start + away);
        if (band.TwiceArea.Sign < 0)
        {
            band = new(start, start + away, end + away, end);
        }

        foreach (var (at, inward) in new[] { (start, end - start), (end, start - end) })
        {
            if (LeaningEdge(layer, at, inward) is { } kept)
            {
                band = band?.Within(kept);
            }
        }

        return band;
    }

    /// <summary>
    /// The half-plane behind the raw edge that starts at this end of the seam, or further out where the other layer
    /// ends the seam first, and leans inward; null where there is none or it leans too far.
    /// </summary>
    private static HalfPlane? LeaningEdge(Layer layer, Point at, Point inward)
    {
        foreach (var face in layer.Hidden)
        {
            for (var i = 0; i < face.Shape.Count; i++)
            {
                var corner = face.Shape[i];
                if (!Away(layer, corner - at).IsZero || Dot(corner - at, inward).Sign > 0)
                {
                    continue;
                }

                Point next = face.Shape.Next(i) - corner,
                    previous = face.Shape[(i + face.Shape.Count - 1) % face.Shape.Count] - corner;
                // The face that begins here lies along the seam with one edge; the other is the raw one.
                var raw = RunsInward(layer, next, inward) ? previous : RunsInward(layer, previous, inward) ? next : (Point?)null;
                if (raw is { } edge && Behind(layer, corner, edge, inward) is { } kept)
                {
                    return kept;
                }
            }
        }

        return null;
    }

    private static bool RunsInward(Layer layer, Point edge, Point inward) =>
        Away(layer, edge).IsZero && Dot(edge, inward).Sign > 0;

    private static HalfPlane? Behind(Layer layer, Point at, Point edge, Point inward)
    {
        Surd away = Away(layer, edge),
            along = Dot(edge, inward),
            awaySquare = (layer.Beyond.A * layer.Beyond.A) + (layer.Beyond.B * layer.Beyond.B);
        // Both are measured against vectors that are not of length one: compare the squares.
        if (
            along.Sign <= 0
            || along * along * awaySquare > GreatestLean * GreatestLean * away * away * Dot(inward, inward)
        )
        {
            return null;
        }

        var half = HalfPlane.LeftOf(new(at, at + edge));
        return half.At(at + inward).Sign > 0 ? half : half.Opposite;
    }

    private static Surd Away(Layer layer, Point step) => (layer.Beyond.A * step.X) + (layer.Beyond.B * step.Y);

    private static Surd Dot(Point p, Point q) => (p.X * q.X) + (p.Y * q.Y);

    /// <summary>The hidden cloth is nowhere wider than this.</summary>
    private static Message Widest(Layer layer)
    {
        var normal = (layer.Beyond.A * layer.Beyond.A) + (layer.Beyond.B * layer.Beyond.B);
        return Say.AtMost(Say.Inches(layer.HiddenReach / Roots.AtMost(normal)));
    }
}
