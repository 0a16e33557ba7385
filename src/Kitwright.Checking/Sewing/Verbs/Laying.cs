using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>Turning what lies there, and laying assemblies right sides together.</summary>
internal static class Laying
{
    public static Finding? Do(Turn verb, Table table, string place)
    {
        if ((table.Pick(verb.On, place, out var item) ?? Table.CheckMotion(verb.Motion, place)) is { } finding)
        {
            return finding;
        }

        if (item is Layers { MayTurnOver: false } && Rigid.Mirrors(verb.Motion))
        {
            return Finding.Of("check.sewing.several-tops", place, ("register", verb.On));
        }

        if (item is HalfSewn)
        {
            return Finding.Of("check.sewing.partial-open", place, ("register", verb.On));
        }

        return table.Put(verb.On, item is Layers layers ? layers.Moved(verb.Motion) : ((Cloth)item).Moved(verb.Motion), place);
    }

    public static Finding? Do(Lay verb, Table table, string place)
    {
        var noBottom = table.Pick(verb.Bottom, place, out var below);
        var noTop = table.PickCloth(verb.Top, place, out var top);
        if ((noBottom ?? noTop ?? Table.CheckMotion(verb.Motion, place)) is { } finding)
        {
            return finding;
        }

        if (!Rigid.Mirrors(verb.Motion))
        {
            return Finding.Of("check.sewing.lay-unmirrored", place, ("top", verb.Top), ("bottom", verb.Bottom));
        }

        // Another assembly may be laid beside one that lies there already, as long as nothing is sewn.
        var (bottom, tops) = below is Layers { Seams.Length: 0 } layers ? (layers.Bottom, layers.Tops) : (below as Cloth, []);
        if (bottom is null)
        {
            return Finding.Of("check.sewing.not-pressed-open", place, ("register", verb.Bottom));
        }

        if (!bottom.RightSideUp || !top.RightSideUp)
        {
            return Finding.Of(
                "check.sewing.lay-wrong-side",
                place,
                ("register", bottom.RightSideUp ? verb.Top : verb.Bottom)
            );
        }

        var laid = top.Moved(verb.Motion);
        return tops.Any(other => Overlap(other, laid, table.Effort))
            ? Finding.Of("check.sewing.tops-overlap", place, ("register", verb.Top))
            : table.Put(verb.Into, new Layers(bottom, [.. tops, laid], []), place);
    }

    private static bool Overlap(Cloth one, Cloth other, Effort effort)
    {
        effort.Spend((long)one.Faces.Length * other.Faces.Length);
        var faces = other.Laid();
        return one.Laid().Any(face => faces.Any(f => face.Shape.Within(f.Shape) is not null));
    }
}
