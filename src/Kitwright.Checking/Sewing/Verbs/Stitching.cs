using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>A seam along a whole line, wherever both layers lie under it.</summary>
internal static class Stitching
{
    public static Finding? Do(Sew verb, Table table, string place)
    {
        if ((table.PickLayers(verb.On, place, out var layers) ?? Table.CheckLine(verb.Line, place)) is { } finding)
        {
            return finding;
        }

        var below = UnderLine.Of(layers.Bottom, verb.Line, table.Effort);
        if (layers.Tops.All(top => below.Common(UnderLine.Of(top, verb.Line, table.Effort)).IsEmpty))
        {
            return Finding.Of("check.sewing.seam-misses", place, ("register", verb.On));
        }

        return table.Put(verb.On, new Layers(layers.Bottom, layers.Tops, [.. layers.Seams, verb.Line]), place);
    }
}
