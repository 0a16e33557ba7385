using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>
/// A cut through everything along a line. Seams that cross it are on both sides afterwards; a seam beside it goes with
/// its cloth. What lands in no register is waste.
/// </summary>
internal static class Dividing
{
    public static Finding? Do(CutAlong verb, Table table, string place)
    {
        if ((table.Pick(verb.On, place, out var item) ?? Table.CheckLine(verb.Line, place)) is { } finding)
        {
            return finding;
        }

        if (verb.Left is null && verb.Right is null)
        {
            return Finding.Of("check.sewing.cut-keeps-nothing", place, ("register", verb.On));
        }

        if (item is Layers { Seams: var seams } && seams.Any(s => SameLine(s, verb.Line)))
        {
            return Finding.Of("check.sewing.cut-through-seam", place, ("register", verb.On));
        }

        var (left, right) = item is Layers layers
            ? DivideLayers(layers, verb.Line, table.Effort)
            : DivideCloth((Cloth)item, verb.Line, table.Effort);
        if (left is null || right is null)
        {
            return Finding.Of("check.sewing.cut-misses", place, ("register", verb.On));
        }

        return (verb.Left is null ? null : table.Put(verb.Left, left, place))
            ?? (verb.Right is null ? null : table.Put(verb.Right, right, place));
    }

    private static (OnTable? Left, OnTable? Right) DivideCloth(Cloth cloth, Line line, Effort effort)
    {
        var (left, right) = cloth.Divide(line, effort);
        return (OrNull(left, cloth), OrNull(right, cloth));
    }

    private static (OnTable? Left, OnTable? Right) DivideLayers(Layers layers, Line line, Effort effort)
    {
        var (bottomLeft, bottomRight) = layers.Bottom.Divide(line, effort);
        var tops = Array.ConvertAll(layers.Tops, top => (Top: top, Parts: top.Divide(line, effort)));
        return (
            Together(OrNull(bottomLeft, layers.Bottom), [.. tops.Select(t => OrNull(t.Parts.Left, t.Top)).OfType<Cloth>()], layers, effort),
            Together(OrNull(bottomRight, layers.Bottom), [.. tops.Select(t => OrNull(t.Parts.Right, t.Top)).OfType<Cloth>()], layers, effort)
        );
    }

    private static Cloth? OrNull(Face[] faces, Cloth from) => faces.Length == 0 ? null : new(faces, from.Lies);

    private static OnTable? Together(Cloth? bottom, Cloth[] tops, Layers whole, Effort effort)
    {
        // Of several assemblies one that no seam holds falls off.
        if (whole is { Tops.Length: > 1, Seams.Length: > 0 } && bottom is not null)
        {
            tops = [.. tops.Where(top => whole.Seams.Any(s => Holds(bottom, top, s, effort)))];
        }

        if (bottom is null || tops.Length == 0)
        {
            return bottom ?? (tops.Length == 1 ? tops[0] : null);
        }

        return new Layers(bottom, tops, [.. whole.Seams.Where(s => tops.Any(top => Holds(bottom, top, s, effort)))]);
    }

    private static bool Holds(Cloth bottom, Cloth top, Line seam, Effort effort) =>
        !UnderLine.Of(bottom, seam, effort).Common(UnderLine.Of(top, seam, effort)).IsEmpty;

    private static bool SameLine(Line p, Line q)
    {
        var half = HalfPlane.LeftOf(p);
        return half.At(q.From).IsZero && half.At(q.To).IsZero;
    }
}
