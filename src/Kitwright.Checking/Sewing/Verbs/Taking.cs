using Kitwright.Checking.Exact;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing.Verbs;

/// <summary>Cloth comes to the table: a cut piece, or a copy of an earlier unit.</summary>
internal static class Taking
{
    public static Finding? Do(Take verb, Table table, string place)
    {
        if (!table.Pieces.TryGetValue(verb.Piece, out var piece))
        {
            return Finding.Of("check.sewing.unknown-piece", place, ("piece", verb.Piece.Value));
        }

        var shape = Shape.Rectangle(0, 0, piece.Width, piece.Height);
        return Lay(table, verb.Into, shape, new TakenPiece(piece, table.Recipe), verb.Motion, place);
    }

    /// <remarks>A unit that was refused must be asked for before: its copies cannot be laid.</remarks>
    public static Finding? Do(Use verb, Table table, string place)
    {
        if (!table.Units.TryGetValue(verb.Unit, out var unit) || unit is null)
        {
            return Finding.Of("check.sewing.unknown-unit", place, ("unit", verb.Unit.Value));
        }

        var part = new UsedUnit(unit);
        if (unit.Recipe.Outline is null)
        {
            return Lay(table, verb.Into, UnitOutline.Of(unit.Recipe, table.Seam), part, verb.Motion, place);
        }

        // Raw edges that are no rectangle are known only face by face.
        table.Effort.Spend(unit.Faces.Length);
        return Lay(table, verb.Into, Array.ConvertAll(unit.Faces, f => new Face(f.Shape, part, Rigid.Still)), verb.Motion, place);
    }

    private static Finding? Lay(Table table, string into, Shape shape, Part part, Motion motion, string place) =>
        Lay(table, into, [new(shape, part, Rigid.Still)], motion, place);

    private static Finding? Lay(Table table, string into, Face[] faces, Motion motion, string place) =>
        Table.CheckMotion(motion, place) ?? table.Put(into, new Cloth(faces, motion), place);
}

/// <summary>The outline of a unit: the finished lower left corner of its bounding box is the origin.</summary>
internal static class UnitOutline
{
    /// <summary>With raw edges; for rectangles only.</summary>
    public static Shape Of(Recipe recipe, Length seam) =>
        Shape.Rectangle(-seam, -seam, recipe.Width - seam, recipe.Height - seam);

    public static Shape Finished(Recipe recipe, Length seam) =>
        recipe.Outline is { } outline
            ? new([.. outline.Corners])
            : Shape.Rectangle(0, 0, recipe.Width - (seam * 2), recipe.Height - (seam * 2));
}
