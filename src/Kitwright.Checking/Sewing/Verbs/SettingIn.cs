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
        var noCloth = table.Pick(verb.On, place, out var on);
        var noPart = table.PickCloth(verb.Part, place, out var part);
        if ((noCloth ?? noPart ?? CheckLines(verb, place)) is { } finding)
        {
            return finding;
        }

        if (on is not HalfSewn and not Cloth)
        {
            return Finding.Of("check.sewing.not-pressed-open", place, ("register", verb.On));
        }

        if (on is Cloth { RightSideUp: false } || !part.RightSideUp)
        {
            return Finding.Of("check.sewing.lay-wrong-side", place, ("register", part.RightSideUp ? verb.On : verb.Part));
        }

        if (on is HalfSewn loose)
        {
            return loose.Join(verb, part.Laid(), table, place, out var more) ?? table.Put(verb.On, more!, place);
        }

        return Join(((Cloth)on).Laid(), part.Laid(), verb, table, place, out var kept, out var shown)
            ?? table.Put(verb.On, new Cloth([.. kept, .. shown], Rigid.Still), place);
    }

    /// <summary>The seam itself.</summary>
    /// <param name="kept">What still shows of what the part is sewn to.</param>
    /// <param name="shown">What shows of the part.</param>
    public static Finding? Join(Face[] on, Face[] part, SewIn verb, Table table, string place, out Face[] kept, out Face[] shown)
    {
        table.Effort.Spend((on.Length + part.Length) * (long)verb.Lines.Length);
        HalfPlane[] angle = [.. verb.Lines.Select(HalfPlane.LeftOf)];
        (var under, kept) = Divide(on, angle);
        (shown, var beyond) = Divide(part, angle);
        for (var i = 0; i < angle.Length; i++)
        {
            var line = verb.Lines[i];
            var whole = Spans.Union([(Surd.Zero, UnderLine.Parameter(line, line.To))]);
            if (CheckSeam(kept, under, shown, beyond, line, whole, angle[i], table, verb.On, place) is { } bad)
            {
                return bad;
            }
        }

        return SticksOut(under, shown, angle) || SticksOut(beyond, kept, [.. angle.Select(a => a.Opposite)])
            ? Finding.Of("check.sewing.sticks-out", place, ("register", verb.On))
            : null;
    }

    /// <summary>A stretch of a seam: both bodies show along all of it, and each has its allowance under the other.</summary>
    /// <param name="side">On which the second body shows.</param>
    public static Finding? CheckSeam(Face[] one, Face[] oneHidden, Face[] other, Face[] otherHidden, Line line, Spans stretch, HalfPlane side, Table table, string register, string place)
    {
        Layer from = Of(one, oneHidden, line, side, bodyOnLeft: false),
            to = Of(other, otherHidden, line, side.Opposite, bodyOnLeft: true);
        return Covers(from.BodyEdge.Common(to.BodyEdge), stretch)
            ? Allowance.Check(from, stretch, table.Seam, place) ?? Allowance.Check(to, stretch, table.Seam, place)
            : Finding.Of("check.sewing.press-no-seam", place, ("register", register));
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
    public static (Face[] Inside, Face[] Outside) Divide(Face[] faces, HalfPlane[] angle)
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
    public static bool SticksOut(Face[] hidden, Face[] over, HalfPlane[] beyond)
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

    public static Surd Reach(Face[] faces, HalfPlane half) =>
        faces
            .SelectMany(face => Enumerable.Range(0, face.Shape.Count).Select(i => half.At(face.Shape[i])))
            .Aggregate(Surd.Zero, (most, at) => at > most ? at : most);
}
