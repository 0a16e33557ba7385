using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// Opening two layers over their one seam. Both have their body on the same side of it and an allowance on the other;
/// the upper layer's body folds over, and the allowances are hidden.
/// </summary>
internal static class Pressing
{
    public static Finding? Do(Press verb, Table table, string place)
    {
        if (table.PickLayers(verb.On, place, out var layers) is { } finding)
        {
            return finding;
        }

        if (layers.Seams.Length != 1)
        {
            return Finding.Of("check.sewing.press-seams", place, ("register", verb.On)) with
            {
                Measured = Say.Count(layers.Seams.Length),
                Expected = Say.Count(1),
            };
        }

        var seam = layers.Seams[0];
        var bottom = Layer.Of(layers.Bottom, seam, table.Effort);
        var top = Layer.Of(layers.Top, seam, table.Effort);
        if (bottom is null || top is null || bottom.BodyOnLeft != top.BodyOnLeft)
        {
            return Finding.Of("check.sewing.press-body", place, ("register", verb.On));
        }

        var shown = bottom.BodyEdge.Common(top.BodyEdge);
        if (shown.IsEmpty)
        {
            return Finding.Of("check.sewing.press-no-seam", place, ("register", verb.On));
        }

        // Hidden cloth lies under the other layer's body; what reaches further would show beyond it.
        if (bottom.HiddenReach > top.BodyReach || top.HiddenReach > bottom.BodyReach)
        {
            return Finding.Of("check.sewing.sticks-out", place, ("register", verb.On));
        }

        return Allowance.Check(bottom, shown, table.Seam, place)
            ?? Allowance.Check(top, shown, table.Seam, place)
            ?? table.Put(verb.On, Opened(bottom, top, seam), place);
    }

    private static Cloth Opened(Layer bottom, Layer top, Line seam)
    {
        // The upper layer lies mirrored; folding mirrors it again. As a rule that leaves it where it was before it was
        // laid, and nothing need be moved.
        var folded = new Cloth(top.Body, Rigid.Compose(top.Lies, Rigid.MirrorIn(seam)));
        if (folded.Lies == bottom.Lies)
        {
            return new([.. bottom.Body, .. top.Body], bottom.Lies);
        }

        return new([.. new Cloth(bottom.Body, bottom.Lies).Laid(), .. folded.Laid()], Rigid.Still);
    }
}
