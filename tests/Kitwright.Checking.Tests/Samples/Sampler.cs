using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using static Kitwright.Checking.Tests.Samples.PlanDraft;

namespace Kitwright.Checking.Tests.Samples;

/// <summary>
/// A small quilt written out by hand, with one of each kind of sewing: a four-patch, geese by stitch-and-flip,
/// half-square triangles two at a time, a turned block, and borders of which two are joined strips.
/// </summary>
/// <remarks>
/// Cut sizes: squares finished + 1/2 in; half-square triangles finished + 7/8 in, two to a pair ([QMK] 3 in: 3 7/8);
/// geese by stitch-and-flip (W + 1/2) × (H + 1/2) with squares of H + 1/2 ([APQ-FG]).
/// </remarks>
internal static class Sampler
{
    public static QuiltPlan Plan { get; } = Draft().Build();

    private static PlanDraft Draft()
    {
        var draft = new PlanDraft(Length.Inches(20), Length.Inches(8));
        draft.Fabric("A", "sky", "light");
        draft.Fabric("B", "goose");
        draft.Fabric("C", "border");
        FourPatch(draft);
        Geese(draft);
        Triangles(draft);
        Borders(draft);
        Top(draft);
        return draft;
    }

    private static void FourPatch(PlanDraft draft)
    {
        draft.Block(
            "four",
            4,
            4,
            ("light", [(0, 0), (2, 0), (2, 2), (0, 2)]),
            ("goose", [(2, 0), (4, 0), (4, 2), (2, 2)]),
            ("light", [(2, 2), (4, 2), (4, 4), (2, 4)]),
            ("goose", [(0, 2), (2, 2), (2, 4), (0, 4)])
        );
        var light = draft.Piece("A1", "light", Length.Inches(2, 1, 2), Length.Inches(2, 1, 2), 4);
        var dark = draft.Piece("B1", "goose", Length.Inches(2, 1, 2), Length.Inches(2, 1, 2), 4);
        draft.Recipe(
            "block/four",
            4,
            4,
            "four",
            2,
            ["unit"],
            [
                TakeAt("unit", light, 0, 0),
                TakeAt("next", dark, 2, 0),
                .. Join("unit", "next", Upright(2)),
                TakeAt("upper", dark, 0, 2),
                TakeAt("next", light, 2, 2),
                .. Join("upper", "next", Upright(2)),
                .. Join("unit", "upper", Level(2)),
            ]
        );
        draft.Picture(
            "four",
            ("piece/A1", 0, 0, 2, 2),
            ("piece/B1", 2, 0, 4, 2),
            ("piece/B1", 0, 2, 2, 4),
            ("piece/A1", 2, 2, 4, 4)
        );
    }

    private static void Geese(PlanDraft draft)
    {
        draft.Block(
            "geese",
            4,
            4,
            ("goose", [(0, 0), (4, 0), (2, 2)]),
            ("sky", [(0, 0), (2, 2), (0, 2)]),
            ("sky", [(4, 0), (4, 2), (2, 2)]),
            ("goose", [(0, 2), (4, 2), (2, 4)]),
            ("sky", [(0, 2), (2, 4), (0, 4)]),
            ("sky", [(4, 2), (4, 4), (2, 4)])
        );
        var body = draft.Piece("B2", "goose", Length.Inches(4, 1, 2), Length.Inches(2, 1, 2), 2);
        var sky = draft.Piece("A2", "sky", Length.Inches(2, 1, 2), Length.Inches(2, 1, 2), 4);
        var h = Surd.OfRoot2(new(1, 8));
        Line rising = new(new(0, 0), new(2, 2)),
            falling = new(new(2, 2), new(4, 0)),
            wasteLeft = new(new(-h, h), new(2 - h, 2 + h)),
            wasteRight = new(new(2 + h, 2 + h), new(4 + h, h));
        draft.Recipe(
            "unit/goose",
            4,
            2,
            null,
            2,
            ["unit"],
            TakeAt("unit", body, 0, 0),
            TakeAt("corner", sky, 0, 0),
            new Lay("unit", "unit", "corner", Motion.Reflect(rising)),
            new Sew("unit", rising),
            new CutAlong("unit", wasteLeft, null, "unit"),
            new Press("unit", PressToward.Top),
            TakeAt("corner", sky, 2, 0),
            new Lay("unit", "unit", "corner", Motion.Reflect(falling)),
            new Sew("unit", falling),
            new CutAlong("unit", wasteRight, null, "unit"),
            new Press("unit", PressToward.Top)
        );
        draft.Recipe(
            "block/geese",
            4,
            4,
            "geese",
            1,
            ["unit"],
            [
                new Use("unit", new("unit/goose"), Motion.Identity),
                new Use("next", new("unit/goose"), Motion.Shift(0, 2)),
                .. Join("unit", "next", Level(2)),
            ]
        );
    }

    private static void Triangles(PlanDraft draft)
    {
        draft.Block(
            "triangles",
            4,
            4,
            ("sky", [(0, 0), (2, 2), (0, 2)]),
            ("goose", [(0, 0), (2, 0), (2, 2)]),
            ("sky", [(2, 0), (4, 2), (2, 2)]),
            ("goose", [(2, 0), (4, 0), (4, 2)]),
            ("sky", [(0, 2), (2, 4), (0, 4)]),
            ("goose", [(0, 2), (2, 2), (2, 4)]),
            ("sky", [(2, 2), (4, 4), (2, 4)]),
            ("goose", [(2, 2), (4, 2), (4, 4)])
        );
        var square = Length.Inches(2, 7, 8);
        var upper = draft.Piece("A3", "sky", square, square, 2);
        var lower = draft.Piece("B3", "goose", square, square, 2);
        Surd cut = square,
            s = Seam,
            half = Surd.OfRoot2(new(1, 8)),
            low = -s - ((cut - (2 * half) - new Rational(5, 2)) / 2);
        Line diagonal = new(new(0, 0), new(cut, cut));
        var unit = Polygon.Rectangle(-s, -s, 2 + s, 2 + s);
        draft.Recipe(
            "unit/triangles",
            2,
            2,
            null,
            2,
            ["one", "two"],
            new Take("a", upper, Motion.Identity),
            new Take("b", lower, Motion.Identity),
            new Lay("pair", "a", "b", Motion.Reflect(diagonal)),
            new Sew("pair", new(new(-half, half), new(cut - half, cut + half))),
            new Sew("pair", new(new(half, -half), new(cut + half, cut - half))),
            new CutAlong("pair", diagonal, "one", "two"),
            new Press("one", PressToward.Top),
            new Press("two", PressToward.Bottom),
            new Turn("one", Motion.Shift(low, low - (2 * half))),
            new Turn("two", Motion.QuarterTurns(2)),
            new Turn("two", Motion.Shift(cut + low, cut - (2 * half) + low)),
            new Trim("one", unit, false),
            new Trim("two", unit, false)
        );
        draft.Recipe(
            "block/triangles",
            4,
            4,
            "triangles",
            1,
            ["unit"],
            [
                new Use("unit", new("unit/triangles"), Motion.Identity),
                new Use("next", new("unit/triangles"), Motion.Shift(2, 0)),
                .. Join("unit", "next", Upright(2)),
                new Use("upper", new("unit/triangles"), Motion.Shift(0, 2)),
                new Use("next", new("unit/triangles"), Motion.Shift(2, 2)),
                .. Join("upper", "next", Upright(2)),
                .. Join("unit", "upper", Level(2)),
            ]
        );
    }

    private static void Borders(PlanDraft draft)
    {
        draft.Frame("border/1/patch/1", "border", 0, 2, 2, 6);
        draft.Frame("border/1/patch/2", "border", 18, 2, 20, 6);
        draft.Frame("border/1/patch/3", "border", 0, 6, 20, 8);
        draft.Frame("border/1/patch/4", "border", 0, 0, 20, 2);
        var width = Length.Inches(2, 1, 2);
        var longer = draft.Piece("C2", "border", Length.Inches(15), width, 2, mayTurn: false);
        var shorter = draft.Piece("C3", "border", Length.Inches(6), width, 2, mayTurn: false);
        // 15 in and 6 in less the join's two seams: 20 1/2 in.
        draft.Recipe(
            "unit/border",
            20,
            2,
            null,
            2,
            ["strip"],
            [
                TakeAt("strip", longer, 0, 0),
                new Take("next", shorter, Motion.Shift(new Rational(57, 4), new Rational(-1, 4))),
                .. Join("strip", "next", Upright(new Rational(29, 2))),
            ]
        );
    }

    private static void Top(PlanDraft draft)
    {
        draft.Place("four", 1, Motion.Shift(2, 2));
        draft.Place("geese", 2, Motion.QuarterTurns(1).Then(Motion.Shift(10, 2)));
        draft.Place("triangles", 3, Motion.Shift(10, 2));
        draft.Place("four", 4, Motion.QuarterTurns(1).Then(Motion.Shift(18, 2)));
        var side = draft.Piece("C1", "border", Length.Inches(2, 1, 2), Length.Inches(4, 1, 2), 2, mayTurn: false);
        draft.Recipe(
            "frame/top",
            20,
            8,
            Recipe.WholeTop,
            1,
            ["top"],
            [
                TakeAt("top", side, 0, 2),
                new Use("next", new("block/four"), Motion.Shift(2, 2)),
                .. Join("top", "next", Upright(2)),
                new Use("next", new("block/geese"), Motion.QuarterTurns(1).Then(Motion.Shift(10, 2))),
                .. Join("top", "next", Upright(6)),
                new Use("next", new("block/triangles"), Motion.Shift(10, 2)),
                .. Join("top", "next", Upright(10)),
                new Use("next", new("block/four"), Motion.QuarterTurns(1).Then(Motion.Shift(18, 2))),
                .. Join("top", "next", Upright(14)),
                TakeAt("next", side, 18, 2),
                .. Join("top", "next", Upright(18)),
                new Use("next", new("unit/border"), Motion.Shift(0, 6)),
                .. Join("top", "next", Level(6)),
                new Use("next", new("unit/border"), Motion.QuarterTurns(2).Then(Motion.Shift(20, 2))),
                .. Join("top", "next", Level(2)),
            ]
        );
        draft.Picture(
            null,
            ("piece/C1", 0, 2, 2, 6),
            ("block/four", 2, 2, 6, 6),
            ("block/geese", 6, 2, 10, 6),
            ("block/triangles", 10, 2, 14, 6),
            ("block/four", 14, 2, 18, 6),
            ("piece/C1", 18, 2, 20, 6),
            ("unit/border", 0, 6, 20, 8),
            ("unit/border", 0, 0, 20, 2)
        );
    }
}
