using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// Opening two layers over their one seam. Both have their body on the same side of it and an allowance on the other;
/// the upper layer's body folds over, and the allowances are hidden. Stitches of another seam may remain within the
/// allowances where both go to one side.
/// </summary>
internal static class Pressing
{
    public static Finding? Do(Press verb, Table table, string place)
    {
        if (table.PickLayers(verb.On, place, out var layers) is { } finding)
        {
            return finding;
        }

        Line[] seams =
            layers.Seams.Length == 1 ? layers.Seams
            : verb.Toward == PressToward.Open ? []
            : [.. layers.Seams.Where((seam, i) => layers.Seams.Index().All(other => other.Index == i || IsHidden(other.Item, layers, seam, table.Effort)))];
        if (seams.Length != 1)
        {
            return Finding.Of("check.sewing.press-seams", place, ("register", verb.On)) with
            {
                Measured = Say.Count(layers.Seams.Length),
                Expected = Say.Count(1),
            };
        }

        var seam = seams[0];
        var opened = new List<Face>();
        var bottom = Layer.Of(layers.Bottom, seam, table.Effort);
        foreach (var cloth in layers.Tops)
        {
            var top = Layer.Of(cloth, seam, table.Effort);
            if (bottom is null || top is null || bottom.BodyOnLeft != top.BodyOnLeft)
            {
                return Finding.Of("check.sewing.press-body", place, ("register", verb.On));
            }

            if (CheckPair(bottom, top, table, verb.On, place) is { } bad)
            {
                return bad;
            }

            if (layers.Tops.Length == 1)
            {
                return table.Put(verb.On, Opened(bottom, top, seam), place);
            }

            opened.AddRange(new Cloth(top.Body, Rigid.Compose(top.Lies, Rigid.MirrorIn(seam))).Laid());
        }

        return table.Put(verb.On, new Cloth([.. new Cloth(bottom!.Body, bottom.Lies).Laid(), .. opened], Rigid.Still), place);
    }

    private static Finding? CheckPair(Layer bottom, Layer top, Table table, string register, string place)
    {
        var shown = bottom.BodyEdge.Common(top.BodyEdge);
        if (shown.IsEmpty)
        {
            return Finding.Of("check.sewing.press-no-seam", place, ("register", register));
        }

        // Hidden cloth lies under the other layer's body; what reaches further would show beyond it.
        if (bottom.HiddenReach > top.BodyReach || top.HiddenReach > bottom.BodyReach)
        {
            return Finding.Of("check.sewing.sticks-out", place, ("register", register));
        }

        return Allowance.Check(bottom, shown, table.Seam, place) ?? Allowance.Check(top, shown, table.Seam, place);
    }

    /// <summary>Whether all stitches of another seam lie within the allowances that this seam hides.</summary>
    private static bool IsHidden(Line other, Layers layers, Line seam, Effort effort)
    {
        var bottom = Layer.Of(layers.Bottom, seam, effort);
        return bottom is not null
            && layers.Tops.All(cloth =>
                Layer.Of(cloth, seam, effort) is { } top
                && UnderLine
                    .Of(layers.Bottom, other, effort)
                    .Common(UnderLine.Of(cloth, other, effort))
                    .Parts.SequenceEqual(UnderHidden(bottom).Common(UnderHidden(top)).Parts)
            );

        Spans UnderHidden(Layer layer) => UnderLine.Of(new(layer.Hidden, layer.Lies), other, effort);
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
