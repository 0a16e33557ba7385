using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// A seam that turns at points where it stops: the part shows within the convex angle of the lines, what it is sewn to
/// shows outside of it. Each must reach a seam allowance under the other along every line.
/// </summary>
internal static class SettingIn
{
    /// <summary>A part of a quilt has fewer sides.</summary>
    private const int MostLines = 16;

    public static Finding? Do(SewIn verb, Table table, string place)
    {
        var noCloth = table.PickCloth(verb.On, place, out var on);
        var noPart = table.PickCloth(verb.Part, place, out var part);
        if ((noCloth ?? noPart ?? CheckLines(verb, place)) is { } finding)
        {
            return finding;
        }

        if (!on.RightSideUp || !part.RightSideUp)
        {
            return Finding.Of("check.sewing.lay-wrong-side", place, ("register", on.RightSideUp ? verb.Part : verb.On));
        }

        table.Effort.Spend((on.Faces.Length + part.Faces.Length) * (long)verb.Lines.Length);
        HalfPlane[] angle = [.. verb.Lines.Select(HalfPlane.LeftOf)];
        var (under, kept) = Divide(on.Laid(), angle);
        var (shown, beyond) = Divide(part.Laid(), angle);
        for (var i = 0; i < angle.Length; i++)
        {
            var line = verb.Lines[i];
            var whole = Spans.Union([(Surd.Zero, UnderLine.Parameter(line, line.To))]);
            Layer from = Of(kept, under, line, angle[i], bodyOnLeft: false),
                to = Of(shown, beyond, line, angle[i].Opposite, bodyOnLeft: true);
            if (!Covers(from.BodyEdge.Common(to.BodyEdge), whole))
            {
                return Finding.Of("check.sewing.press-no-seam", place, ("register", verb.On));
            }

            var bad = Allowance.Check(from, whole, table.Seam, place) ?? Allowance.Check(to, whole, table.Seam, place);
            if (bad is not null)
            {
                return bad;
            }
        }

        return SticksOut(under, shown, angle) || SticksOut(beyond, kept, [.. angle.Select(a => a.Opposite)])
            ? Finding.Of("check.sewing.sticks-out", place, ("register", verb.On))
            : table.Put(verb.On, new Cloth([.. kept, .. shown], Rigid.Still), place);
    }

    /// <summary>Each line begins where the one before ends, and turns left there.</summary>
    private static Finding? CheckLines(SewIn verb, string place)
    {
        var lines = verb.Lines;
        var sound = lines.Length is > 0 and <= MostLines && lines.All(l => l.From != l.To);
        for (var i = 1; sound && i < lines.Length; i++)
        {
            sound = lines[i].From == lines[i - 1].To && HalfPlane.LeftOf(lines[i - 1]).At(lines[i].To).Sign > 0;
        }

        return sound ? null : Finding.Of("check.sewing.line", place);
    }

    /// <summary>What lies in the convex angle and what does not; a face that only touches it stays whole.</summary>
    private static (Face[] Inside, Face[] Outside) Divide(Face[] faces, HalfPlane[] angle)
    {
        var inside = new List<Face>();
        var outside = new List<Face>();
        foreach (var face in faces)
        {
            var within = angle.Aggregate((Face?)face, (rest, half) => rest?.Within(half));
            if (within is null)
            {
                outside.Add(face);
                continue;
            }

            inside.Add(within);
            var rest = face;
            foreach (var half in angle)
            {
                if (rest.Within(half.Opposite) is { } beyond)
                {
                    outside.Add(beyond);
                }

                rest = rest.Within(half)!;
            }
        }

        return ([.. inside], [.. outside]);
    }

    private static Layer Of(Face[] body, Face[] hidden, Line line, HalfPlane beyond, bool bodyOnLeft) =>
        new(body, hidden, Rigid.Still, line, beyond, bodyOnLeft, Reach(body, beyond.Opposite), Reach(hidden, beyond));

    private static bool Covers(Spans seam, Spans whole) => seam.Common(whole).Parts.SequenceEqual(whole.Parts);

    /// <summary>Whether hidden cloth reaches further over every line than the cloth that hides it.</summary>
    private static bool SticksOut(Face[] hidden, Face[] over, HalfPlane[] beyond)
    {
        Surd[] reach = [.. beyond.Select(half => Reach(over, half))];
        return hidden.Any(face =>
            Enumerable
                .Range(0, face.Shape.Count)
                .Any(corner =>
                    !beyond.Index().Any(half => half.Item.At(face.Shape[corner]) <= reach[half.Index])
                )
        );
    }

    private static Surd Reach(Face[] faces, HalfPlane half) =>
        faces
            .SelectMany(face => Enumerable.Range(0, face.Shape.Count).Select(i => half.At(face.Shape[i])))
            .Aggregate(Surd.Zero, (most, at) => at > most ? at : most);
}
