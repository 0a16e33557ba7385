using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>Turning what lies there, and laying two assemblies right sides together.</summary>
internal static class Laying
{
    public static Finding? Do(Turn verb, Table table, string place) =>
        table.Pick(verb.On, place, out var item)
        ?? Table.CheckMotion(verb.Motion, place)
        ?? table.Put(
            verb.On,
            item is Layers layers ? layers.Moved(verb.Motion) : ((Cloth)item).Moved(verb.Motion),
            place
        );

    public static Finding? Do(Lay verb, Table table, string place)
    {
        var noBottom = table.PickCloth(verb.Bottom, place, out var bottom);
        var noTop = table.PickCloth(verb.Top, place, out var top);
        if ((noBottom ?? noTop ?? Table.CheckMotion(verb.Motion, place)) is { } finding)
        {
            return finding;
        }

        if (!Rigid.Mirrors(verb.Motion))
        {
            return Finding.Of("check.sewing.lay-unmirrored", place, ("top", verb.Top), ("bottom", verb.Bottom));
        }

        if (!bottom.RightSideUp || !top.RightSideUp)
        {
            return Finding.Of(
                "check.sewing.lay-wrong-side",
                place,
                ("register", bottom.RightSideUp ? verb.Top : verb.Bottom)
            );
        }

        return table.Put(verb.Into, new Layers(bottom, top.Moved(verb.Motion), []), place);
    }
}
