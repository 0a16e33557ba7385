using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Samples.Edits;

namespace Kitwright.Checking.Tests;

/// <summary>Sewing that goes wrong in one place is refused, and for the right reason.</summary>
public sealed class SewingMutantTest
{
    private const string Four = "block/four";
    private const string Goose = "unit/goose";
    private const string Pair = "unit/triangles";
    private const string Top = "frame/top";

    private static readonly Length Less = -Step;

    public static Mutants Wrong { get; } = new()
    {
        // Sizes of pieces
        { "square 1/8 in too narrow", "check.sewing.allowance", p => p.Resize("A1", Less, Length.Zero) },
        { "square 1/8 in too wide", "check.sewing.unit-size", p => p.Resize("A1", Step, Length.Zero) },
        { "square 1/8 in too low", "check.sewing.allowance", p => p.Resize("B1", Length.Zero, Less) },
        { "triangles' squares 1/8 in too small", "check.sewing.trim-too-small", p => p.Resize("A3", Less, Less).Resize("B3", Less, Less) },
        { "corner square 1/8 in too small", "check.sewing.allowance", p => p.Resize("A2", Less, Less) },
        { "joined strip 1/8 in too short", "check.sewing.unit-size", p => p.Resize("C3", Less, Length.Zero) },
        { "border 1/8 in too short", "check.sewing.allowance", p => p.Resize("C1", Length.Zero, Less) },
        { "border 1/8 in too narrow for its allowance", "check.sewing.allowance", p => p.Resize("C1", Less, Length.Zero) },

        // Seams
        { "seam a step to the right", "check.sewing.allowance", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = s.Line.Shifted(Step, 0) }) },
        { "seam a step to the left", "check.sewing.unit-size", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = s.Line.Shifted(-(Surd)Step, 0) }) },
        { "seam of a pair a step off", "check.sewing.trim-too-small", p => p.EditVerb<Sew>(Pair, 4, s => s with { Line = s.Line.Shifted(-(Surd)Step, 0) }) },
        { "seam of a pair a step too near the cut", "check.sewing.allowance", p => p.EditVerb<Sew>(Pair, 4, s => s with { Line = s.Line.Shifted(Step, 0) }) },
        { "seam on the raw edge", "check.sewing.allowance", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = s.Line.Shifted(new Rational(1, 4), 0) }) },
        { "seam beside the cloth", "check.sewing.seam-misses", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = s.Line.Shifted(9, 0) }) },
        { "seam askew", "check.sewing.allowance", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = new(new(2, 0), new(new Rational(17, 8), 4)) }) },
        { "seam left out", "check.sewing.press-seams", p => p.DropVerb(Four, 4) },
        { "seam sewn twice", "check.sewing.press-seams", p => p.AddVerb(Four, 4, new Sew("unit", PlanDraft.Upright(2))) },
        { "second seam of a pair left out", "check.sewing.press-seams", p => p.DropVerb(Pair, 5) },
        { "seam without direction", "check.sewing.line", p => p.EditVerb<Sew>(Four, 4, s => s with { Line = new(s.Line.From, s.Line.From) }) },
        { "seam on a single layer", "check.sewing.not-two-layers", p => p.AddVerb(Four, 2, new Sew("unit", PlanDraft.Upright(2))) },

        // Laying and pressing
        { "laid without turning over", "check.sewing.lay-unmirrored", p => p.EditVerb<Lay>(Four, 3, l => l with { Motion = Motion.Identity }) },
        { "laid in another place", "check.sewing.unit-size", p => p.EditVerb<Lay>(Four, 3, l => l with { Motion = l.Motion.Then(Motion.Shift(Step, 0)) }) },
        { "laid higher", "check.sewing.unit-size", p => p.EditVerb<Lay>(Four, 3, l => l with { Motion = l.Motion.Then(Motion.Shift(0, Step)) }) },
        { "turned over before it is laid", "check.sewing.lay-wrong-side", p => p.AddVerb(Four, 3, new Turn("next", Motion.Reflect(PlanDraft.Upright(3)))) },
        { "stretched as it is laid", "check.sewing.motion", p => p.EditVerb<Lay>(Four, 3, l => l with { Motion = l.Motion with { YY = 2 } }) },
        { "press left out", "check.sewing.not-pressed-open", p => p.DropVerb(Four, 5) },
        { "last press left out", "check.sewing.not-pressed-open", p => p.DropVerb(Four, 13) },
        { "pressed twice", "check.sewing.not-two-layers", p => p.AddVerb(Four, 6, new Press("unit", PressToward.Top)) },
        { "pressed before the waste is off", "check.sewing.press-body", p => p.DropVerb(Goose, 5) },
        { "unit ends wrong side up", "check.sewing.wrong-side-up", p => p.AddVerb(Four, 14, new Turn("unit", Motion.Reflect(PlanDraft.Upright(2)))) },
        { "unit ends elsewhere", "check.sewing.unit-size", p => p.AddVerb(Four, 14, new Turn("unit", Motion.Shift(0, Step))) },

        // Cuts and trims
        { "waste cut a step too near the seam", "check.sewing.allowance", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Line = c.Line.Shifted(Step, 0) }) },
        { "waste cut along the seam", "check.sewing.cut-through-seam", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Line = new(new(0, 0), new(1, 1)) }) },
        { "waste kept and goose thrown away", "check.sewing.press-seams", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Left = "unit", Right = null }) },
        { "both sides of a cut thrown away", "check.sewing.cut-keeps-nothing", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Right = null }) },
        { "cut beside the cloth", "check.sewing.cut-misses", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Line = c.Line.Shifted(-9, 0) }) },
        { "waste kept on the table", "check.sewing.left-over", p => p.EditVerb<CutAlong>(Goose, 5, c => c with { Left = "waste" }) },
        { "pair cut a step off the diagonal", "check.sewing.allowance", p => p.EditVerb<CutAlong>(Pair, 6, c => c with { Line = c.Line.Shifted(Step, 0) }) },
        { "pair not cut", "check.sewing.register-empty", p => p.DropVerb(Pair, 6) },
        { "trim larger than the unit", "check.sewing.trim-too-small", p => p.EditVerb<Trim>(Pair, 12, t => t with { Rectangle = Grown(t.Rectangle, Step) }) },
        { "trim a step smaller than the unit should be", "check.sewing.trim-uncounted", p => p.EditVerb<Trim>(Pair, 12, t => t with { Rectangle = Grown(t.Rectangle, Less) }) },
        { "trim to something askew", "check.sewing.trim-shape", p => p.EditVerb<Trim>(Pair, 12, t => t with { Rectangle = Askew(t.Rectangle) }) },
        { "trim moved off the unit", "check.sewing.trim-too-small", p => p.EditVerb<Trim>(Pair, 12, t => t with { Rectangle = t.Rectangle.Moved(Motion.Shift(Step, 0)) }) },
        { "excess not trimmed", "check.sewing.unit-size", p => p.DropVerb(Pair, 13) },

        // The wrong thing
        { "piece of another role", "check.sewing.patch", p => p.EditVerb<Take>(Four, 1, t => t with { Piece = new("piece/B1") }) },
        { "unit turned the wrong way", "check.sewing.patch", p => p.EditVerb<Use>("block/triangles", 1, u => u with { Motion = Motion.QuarterTurns(2).Then(Motion.Shift(2, 2)) }) },
        { "goose upside down", "check.sewing.patch", p => p.EditVerb<Use>("block/geese", 1, u => u with { Motion = Motion.QuarterTurns(2).Then(Motion.Shift(4, 2)) }) },
        { "copies that differ", "check.sewing.copies-differ", p => p.EditVerb<Turn>(Pair, 10, t => t with { Motion = Motion.Identity }).EditVerb<Turn>(Pair, 11, t => t with { Motion = Sibling(p) }) },
        { "block turned the wrong way", "check.sewing.placement", p => p.EditVerb<Use>(Top, 6, u => u with { Motion = Motion.QuarterTurns(3).Then(Motion.Shift(6, 6)) }) },
        { "four-patch turned the wrong way", "check.sewing.placement", p => p.EditVerb<Use>(Top, 14, u => u with { Motion = Motion.Shift(14, 2) }) },
        { "unknown piece", "check.sewing.unknown-piece", p => p.EditVerb<Take>(Four, 1, t => t with { Piece = new("piece/Z9") }) },
        { "unknown unit", "check.sewing.unknown-unit", p => p.EditVerb<Use>(Top, 2, u => u with { Unit = new("block/none") }) },
        { "unit of a later recipe", "check.sewing.unknown-unit", p => p with { Sewing = new([.. p.Sewing.Recipes.Reverse()]) } },
        { "taken to an occupied place", "check.sewing.register-in-use", p => p.EditVerb<Take>(Four, 2, t => t with { Into = "unit" }) },
        { "nothing there to lay", "check.sewing.register-empty", p => p.EditVerb<Lay>(Four, 3, l => l with { Top = "none" }) },
        { "something left on the table", "check.sewing.left-over", p => p.AddVerb(Four, 14, new Take("spare", new("piece/A1"), Motion.Identity)) },

        // Counts
        { "unit used too often", "check.sewing.units-short", p => p.EditRecipe(Four, r => r with { Runs = 1 }) },
        { "unit made too often", "check.sewing.units-over", p => p.EditRecipe(Four, r => r with { Runs = 3 }) },
        { "no runs", "check.sewing.runs", p => p.EditRecipe(Four, r => r with { Runs = 0 }) },
        { "a piece missing", "check.sewing.pieces-used", p => p.EditPiece("A1", x => x with { Count = 3 }) },
        { "a piece that is not sewn", "check.sewing.pieces-used", p => p.EditPiece("A1", x => x with { Count = 5 }) },
        { "a copy missing from what is made", "check.sewing.left-over", p => p.EditRecipe(Pair, r => r with { Makes = ["one"] }) },
        { "nothing made", "check.sewing.makes-nothing", p => p.EditRecipe(Pair, r => r with { Makes = [] }) },
        { "no top", "check.sewing.no-top", p => p.EditRecipe(Top, r => r with { Shows = null }) },
        { "another block shown", "check.sewing.patch", p => p.EditRecipe(Four, r => r with { Shows = "geese" }) },
        { "unknown block shown", "check.sewing.unknown-block", p => p.EditRecipe(Four, r => r with { Shows = "none" }) },
        { "unit stated a step wider", "check.sewing.unit-size", p => p.EditRecipe(Four, r => r with { Width = r.Width + Step }) },
        { "unit of no size", "check.sewing.unit-too-small", p => p.EditRecipe(Four, r => r with { Width = Length.Inches(0, 1, 2) }) },
        { "role changed in a drawing", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Patches = x.Patches.SetItem(0, x.Patches[0] with { Role = "sky" }) }) },
        { "patch left out of a drawing", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Patches = x.Patches.RemoveAt(0) }) },
        { "patch twice in a drawing", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Patches = x.Patches.SetItem(2, x.Patches[0]) }) },
        { "block turned in a drawing", "check.sewing.picture", p => p.EditPicture(Top, x => x with { Tiles = x.Tiles.SetItem(0, x.Tiles[0] with { Motion = Motion.QuarterTurns(1).Then(Motion.Shift(6, 2)) }) }) },
        { "unknown block in a drawing", "check.sewing.picture", p => p.EditPicture(Top, x => x with { Tiles = x.Tiles.SetItem(0, x.Tiles[0] with { Block = "none" }) }) },
        { "part of another piece in a drawing", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Parts = x.Parts.SetItem(0, x.Parts[0] with { Of = new("piece/B1") }) }) },
        { "part left out of a drawing", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Parts = x.Parts.RemoveAt(0) }) },
        { "part drawn too small", "check.sewing.picture", p => p.EditPicture(Four, x => x with { Parts = x.Parts.SetItem(0, x.Parts[0] with { Outline = Polygon.Rectangle(0, 0, 1, 2) }) }) },
        { "wider seam asked for", "check.sewing.allowance", p => p with { Seam = Length.Inches(0, 3, 8) } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_plan_is_refused(string name) => Wrong.MustBeRefused(name);

    private static Polygon Grown(Polygon rectangle, Length by)
    {
        var (low, high) = rectangle.Bounds();
        return Polygon.Rectangle(low.X, low.Y, high.X + (Surd)by, high.Y);
    }

    private static Polygon Askew(Polygon rectangle) =>
        new(rectangle.Corners.SetItem(2, rectangle.Corners[2] + new Point(Step, 0)));

    /// <summary>Where the second of a pair would lie if it were not turned: below the diagonal as the first is above.</summary>
    private static Motion Sibling(QuiltPlan plan)
    {
        var first = ((Turn)plan.Sewing.Recipes.Single(r => r.Id.Value == Pair).Verbs[8]).Motion;
        return Motion.Shift(first.DY, first.DX);
    }
}
