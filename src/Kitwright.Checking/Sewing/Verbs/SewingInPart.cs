using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// A partial seam: its first stretch holds two assemblies together at once, the rest when other parts have been joined
/// to them. Along either stretch both must show, each with its allowance under the other.
/// </summary>
internal static class SewingInPart
{
    public static Finding? Do(SewPart verb, Table table, string place)
    {
        var noCloth = table.PickCloth(verb.On, place, out var on);
        var noPart = table.PickCloth(verb.Part, place, out var part);
        if ((noCloth ?? noPart ?? CheckStop(verb, place)) is { } finding)
        {
            return finding;
        }

        if (!on.RightSideUp || !part.RightSideUp)
        {
            return Finding.Of("check.sewing.lay-wrong-side", place, ("register", on.RightSideUp ? verb.Part : verb.On));
        }

        var left = HalfPlane.LeftOf(verb.Line);
        Face[] below = on.Laid(),
            above = part.Laid();
        table.Effort.Spend(below.Length + above.Length);
        var side = SettingIn.Reach(above, left) > SettingIn.Reach(above, left.Opposite) ? left : left.Opposite;
        var (under, kept) = SettingIn.Divide(below, [side]);
        var (shown, beyond) = SettingIn.Divide(above, [side]);
        var stop = UnderLine.Parameter(verb.Line, verb.Stop);
        var sewn = Spans.Union([(Surd.Zero, stop)]);
        if (SettingIn.CheckSeam(kept, under, shown, beyond, verb.Line, sewn, side, table, verb.On, place) is { } bad)
        {
            return bad;
        }

        if (SettingIn.SticksOut(under, shown, [side]) || SettingIn.SticksOut(beyond, kept, [side.Opposite]))
        {
            return Finding.Of("check.sewing.sticks-out", place, ("register", verb.On));
        }

        // The allowance beyond the stop stays loose.
        var step = verb.Line.To - verb.Line.From;
        var ahead = HalfPlane.LeftOf(new(verb.Stop, verb.Stop + new Point(step.Y, -step.X)));
        var slit = new Slit([.. kept, .. shown], verb.Line, stop, side, SettingIn.Divide(beyond, [ahead]).Inside, SettingIn.Divide(under, [ahead]).Inside);
        return table.Put(verb.On, new HalfSewn(slit), place);
    }

    public static Finding? Do(CloseSeam verb, Table table, string place)
    {
        if (table.Pick(verb.On, place, out var item) is { } finding)
        {
            return finding;
        }

        if (item is not HalfSewn { Slit: var slit })
        {
            return Finding.Of("check.sewing.nothing-to-close", place, ("register", verb.On));
        }

        table.Effort.Spend(slit.Faces.Length + slit.PartLip.Length + slit.OtherLip.Length);
        var (shown, kept) = SettingIn.Divide(slit.Faces, [slit.PartSide]);
        var rest = Spans.Union([(slit.Stop, UnderLine.Parameter(slit.Line, slit.Line.To))]);
        if (SettingIn.CheckSeam(kept, slit.OtherLip, shown, slit.PartLip, slit.Line, rest, slit.PartSide, table, verb.On, place) is { } bad)
        {
            return bad;
        }

        // Beyond the seam's end they may lie along one another for no more than an allowance, which a later seam takes.
        var met = UnderLine.EdgesOf(kept, slit.Line).Common(UnderLine.EdgesOf(shown, slit.Line));
        var open = met.Parts.Select(stretch => stretch.To - rest.Parts[0].To).Where(over => over.Sign > 0);
        var along = slit.Line.To - slit.Line.From;
        Surd seam = table.Seam,
            square = (along.X * along.X) + (along.Y * along.Y);
        if (open.Any(over => over * over > seam * seam * square))
        {
            return Finding.Of("check.sewing.press-no-seam", place, ("register", verb.On));
        }

        return SettingIn.SticksOut(slit.OtherLip, shown, [slit.PartSide]) || SettingIn.SticksOut(slit.PartLip, kept, [slit.PartSide.Opposite])
            ? Finding.Of("check.sewing.sticks-out", place, ("register", verb.On))
            : table.Put(verb.On, new Cloth(slit.Faces, Rigid.Still), place);
    }

    /// <summary>The stop lies on the line, between its ends.</summary>
    private static Finding? CheckStop(SewPart verb, string place)
    {
        if (Table.CheckLine(verb.Line, place) is { } finding)
        {
            return finding;
        }

        var at = UnderLine.Parameter(verb.Line, verb.Stop);
        return HalfPlane.LeftOf(verb.Line).At(verb.Stop).IsZero && at.Sign > 0 && at < UnderLine.Parameter(verb.Line, verb.Line.To)
            ? null
            : Finding.Of("check.sewing.line", place);
    }
}
