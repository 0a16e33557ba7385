using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using static Kitwright.Checking.Tests.Samples.PlanDraft;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>Blocks sewn in ways that the sampler does not use; each is a quilt of one block.</summary>
internal static class OtherSewing
{
    /// <summary>A four-patch from two strips: sewn together, cut across, and two of the cuts joined (own arithmetic).</summary>
    public static QuiltPlan StripSet()
    {
        var draft = Of("four", 4, ("light", [(0, 0), (2, 0), (2, 2), (0, 2)]), ("dark", [(2, 0), (4, 0), (4, 2), (2, 2)]), ("light", [(2, 2), (4, 2), (4, 4), (2, 4)]), ("dark", [(0, 2), (2, 2), (2, 4), (0, 4)]));
        Length wide = Length.Inches(5),
            high = Length.Inches(2, 1, 2);
        var light = draft.Piece("A1", "light", wide, high, 1);
        var dark = draft.Piece("B1", "dark", wide, high, 1);
        Surd s = Seam;
        var across = Upright(2 + s);
        draft.Recipe(
            "unit/pair",
            2,
            4,
            null,
            1,
            ["one", "two"],
            [
                TakeAt("set", dark, 0, 0),
                TakeAt("next", light, 0, 2),
                .. Join("set", "next", Level(2)),
                new CutAlong("set", across, "one", "two"),
                new Turn("two", Motion.Shift(-new Rational(5, 2), 0)),
            ]
        );
        draft.Recipe(
            "block/four",
            4,
            4,
            "four",
            1,
            ["unit"],
            [
                new Use("unit", new("unit/pair"), Motion.QuarterTurns(2).Then(Motion.Shift(2, 4))),
                new Use("next", new("unit/pair"), Motion.Shift(2, 0)),
                .. Join("unit", "next", Upright(2)),
            ]
        );
        return Finish(draft, "four", 4);
    }

    /// <summary>
    /// Four triangles round a square set on its points. Outer squares finished/2 + 7/8 cut once; the center
    /// (12 / 2) × 1.414 + 1/2, up to 9 in ([LES5]). The seams lie where the design has them, so that the rounding of the
    /// center goes into its allowances.
    /// </summary>
    public static QuiltPlan SquareOnPoint()
    {
        var draft = Of("point", 12, ("dark", [(6, 0), (12, 6), (6, 12), (0, 6)]), ("light", [(0, 0), (6, 0), (0, 6)]), ("light", [(6, 0), (12, 0), (12, 6)]), ("light", [(12, 6), (12, 12), (6, 12)]), ("light", [(0, 6), (6, 12), (0, 12)]));
        var center = draft.Piece("B1", "dark", Length.Inches(9), Length.Inches(9), 1);
        var outer = draft.Piece("A1", "light", Length.Inches(6, 7, 8), Length.Inches(6, 7, 8), 2);
        Surd size = Length.Inches(6, 7, 8),
            s = Seam;
        // The square's middle to the origin, an eighth of a turn, then to the middle of the block.
        var half = new Rational(9, 2);
        var set = Motion.Shift(-(Surd)half, -(Surd)half).Then(Motion.EighthTurns(1)).Then(Motion.Shift(6, 6));
        // A triangle with its right angle a seam outside the block's lower left corner.
        var corner = Motion.Shift(-s, -s);
        Line diagonal = new(new(size, 0), new(0, size));
        Motion[] turns = [.. Enumerable.Range(0, 4).Select(n => Motion.Shift(-6, -6).Then(Motion.QuarterTurns(n)).Then(Motion.Shift(6, 6)))];
        Line seam = new(new(6, 0), new(0, 6));
        List<Verb> verbs = [new Take("unit", center, set)];
        foreach (var (first, second) in new[] { (0, 2), (1, 3) })
        {
            verbs.Add(new Take("square", outer, Motion.Identity));
            // To the left of a line that runs down to the right lies its upper side.
            verbs.Add(new CutAlong("square", diagonal, "near", "far"));
            verbs.Add(new Turn("near", corner.Then(turns[first])));
            verbs.Add(new Turn("far", Motion.QuarterTurns(2).Then(Motion.Shift(size, size)).Then(corner).Then(turns[second])));
            foreach (var (triangle, turn) in new[] { ("near", turns[first]), ("far", turns[second]) })
            {
                verbs.AddRange(Join("unit", triangle, turn.Apply(seam)));
            }
        }

        draft.Recipe("block/point", 12, 12, "point", 1, ["unit"], [.. verbs]);
        return Finish(draft, "point", 12);
    }

    /// <summary>A wide piece and a narrow one beside it.</summary>
    public static QuiltPlan WideAndNarrow()
    {
        var draft = Of("edged", 6, ("dark", [(0, 0), (5, 0), (5, 6), (0, 6)]), ("light", [(5, 0), (6, 0), (6, 6), (5, 6)]));
        var high = Length.Inches(6, 1, 2);
        var light = draft.Piece("A1", "light", Length.Inches(1, 1, 2), high, 1);
        var dark = draft.Piece("B1", "dark", Length.Inches(5, 1, 2), high, 1);
        draft.Recipe("block/edged", 6, 6, "edged", 1, ["unit"], [TakeAt("unit", dark, 0, 0), TakeAt("edge", light, 5, 0), .. Join("unit", "edge", Upright(5))]);
        return Finish(draft, "edged", 6);
    }

    /// <summary>The square on its points, with its corner triangles as units of their own: two from a square.</summary>
    public static QuiltPlan CornersAsUnits()
    {
        var plan = SquareOnPoint();
        var block = plan.Sewing.Recipes[0];
        Surd size = Length.Inches(6, 7, 8),
            s = Seam;
        var square = new PathId("piece/A1");
        Recipe corner = new(
            new("unit/corner"),
            "by-hand",
            [
                new Take("square", square, Motion.Shift(-s, -s)),
                new CutAlong("square", new(new(size - s, -s), new(-s, size - s)), "near", "far"),
                new Turn("far", Motion.QuarterTurns(2).Then(Motion.Shift(size - (2 * s), size - (2 * s)))),
            ],
            ["near", "far"],
            2,
            Length.Inches(6, 1, 2),
            Length.Inches(6, 1, 2),
            null,
            block.Name
        )
        {
            Outline = Outline((0, 0), (6, 0), (0, 6)),
        };
        List<Verb> verbs = [block.Verbs[0]];
        foreach (var n in new[] { 0, 2, 1, 3 })
        {
            var turn = Motion.Shift(-6, -6).Then(Motion.QuarterTurns(n)).Then(Motion.Shift(6, 6));
            verbs.Add(new Use("corner", corner.Id, turn));
            verbs.AddRange(Join("unit", "corner", turn.Apply(new Line(new(6, 0), new(0, 6)))));
        }

        return plan with { Sewing = new([corner, block with { Verbs = [.. verbs] }, plan.Sewing.Recipes[1]]) };
    }

    private static PlanDraft Of(string block, int size, params (string Role, (int X, int Y)[] Corners)[] patches)
    {
        var draft = new PlanDraft(Length.Inches(size), Length.Inches(size));
        draft.Fabric("A", "light");
        draft.Fabric("B", "dark");
        draft.Block(block, size, size, patches);
        draft.Place(block, 1, Motion.Identity);
        return draft;
    }

    private static QuiltPlan Finish(PlanDraft draft, string block, int size)
    {
        draft.Recipe("frame/top", size, size, Recipe.WholeTop, 1, ["top"], new Use("top", new($"block/{block}"), Motion.Identity));
        return draft.Build();
    }
}
