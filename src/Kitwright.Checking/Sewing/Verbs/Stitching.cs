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

        if (Common(layers.Bottom, layers.Top, verb, table).IsEmpty)
        {
            return Finding.Of("check.sewing.seam-misses", place, ("register", verb.On));
        }

        return table.Put(verb.On, new Layers(layers.Bottom, layers.Top, [.. layers.Seams, verb.Line]), place);
    }

    private static Exact.Spans Common(Cloth bottom, Cloth top, Sew verb, Table table) =>
        UnderLine.Of(bottom, verb.Line, table.Effort).Common(UnderLine.Of(top, verb.Line, table.Effort));
}
