using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// An assembly with a seam that is sewn in part. It lies open, right side up, as it will when the seam is closed; beyond
/// the stop the two sides are not held together, and each keeps its allowance.
/// </summary>
/// <param name="Faces">What shows.</param>
/// <param name="Line">The whole seam, sewn from its start.</param>
/// <param name="Stop">As a parameter of the line.</param>
/// <param name="PartSide">The half-plane on which the part lies that was sewn on.</param>
/// <param name="PartLip">The loose allowance of the part, on the other side of the line.</param>
/// <param name="OtherLip">The loose allowance of what it was sewn to, on the part's side.</param>
internal sealed record Slit(Face[] Faces, Line Line, Surd Stop, HalfPlane PartSide, Face[] PartLip, Face[] OtherLip);

/// <summary>What a register holds from the first stitches of a partial seam until the seam is closed.</summary>
internal sealed class HalfSewn(Slit slit) : OnTable
{
    public Slit Slit => slit;

    /// <summary>
    /// Sews another part to it. A seam that runs into the loose stretch is sewn to one of its sides, with the other one
    /// folded back along the line; any other seam must keep clear of the loose edges.
    /// </summary>
    public Finding? Join(SewIn verb, Face[] part, Table table, string place, out HalfSewn? joined)
    {
        joined = null;
        if (verb.Lines.Any(line => Meets(line.From) || Meets(line.To)))
        {
            return JoinOneSide(verb, part, table, place, out joined);
        }

        HalfPlane[] angle = [.. verb.Lines.Select(HalfPlane.LeftOf)];
        if (SettingIn.Divide([.. slit.PartLip, .. slit.OtherLip], angle).Inside.Length > 0 || verb.Lines.Any(Crosses))
        {
            return Finding.Of("check.sewing.partial-caught", place, ("register", verb.On));
        }

        if (SettingIn.Join(slit.Faces, part, verb, table, place, out var kept, out var shown) is { } finding)
        {
            return finding;
        }

        joined = new(slit with { Faces = [.. kept, .. shown] });
        return null;
    }

    private Finding? JoinOneSide(SewIn verb, Face[] part, Table table, string place, out HalfSewn? joined)
    {
        joined = null;
        // The part goes to the side on which most of it lies.
        var toPart = SettingIn.Reach(part, slit.PartSide) > SettingIn.Reach(part, slit.PartSide.Opposite);
        var side = toPart ? slit.PartSide : slit.PartSide.Opposite;
        var (near, far) = SettingIn.Divide(slit.Faces, [side]);
        var lip = toPart ? slit.PartLip : slit.OtherLip;
        if (SettingIn.Join([.. near, .. lip], part, verb, table, place, out var kept, out var shown) is { } finding)
        {
            return finding;
        }

        var (open, loose) = SettingIn.Divide([.. kept, .. shown], [side]);
        var rest = slit with { Faces = [.. far, .. open] };
        joined = new(toPart ? rest with { PartLip = loose } : rest with { OtherLip = loose });
        return null;
    }

    /// <summary>Whether a place lies on the loose stretch, or further on.</summary>
    private bool Meets(Point place) => slit.PartSide.At(place).IsZero && UnderLine.Parameter(slit.Line, place) >= slit.Stop;

    /// <summary>Whether a seam crosses the line at the loose stretch or further on.</summary>
    private bool Crosses(Line line)
    {
        Surd from = slit.PartSide.At(line.From),
            to = slit.PartSide.At(line.To);
        return from.Sign * to.Sign < 0 && UnderLine.Parameter(slit.Line, line.From + ((line.To - line.From) * (from / (from - to)))) >= slit.Stop;
    }
}
