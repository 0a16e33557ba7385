using Kitwright.Checking.Tests.Samples;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Samples.Edits;

namespace Kitwright.Checking.Tests;

/// <summary>Designs that are not whole are refused before anything is held against them.</summary>
public sealed class DesignMutantTest
{
    public static Mutants Wrong { get; } = new()
    {
        { "gap in a block", "check.design.block-filled", p => p.EditPatch("block/four/patch/1", x => x with { Shape = Polygon.Rectangle(0, 0, 2, new Rational(15, 8)) }) },
        { "overlap in a block", "check.design.block-filled", p => p.EditPatch("block/four/patch/1", x => x with { Shape = Polygon.Rectangle(0, 0, 2, new Rational(17, 8)) }) },
        { "patch left out", "check.design.block-filled", p => p.EditDesign(d => d with { Blocks = d.Blocks.SetItem(0, d.Blocks[0] with { Patches = d.Blocks[0].Patches.RemoveAt(2) }) }) },
        { "patch of a block twice over another", "check.design.block-filled", p => p.EditPatch("block/four/patch/2", x => x with { Shape = PlanDraft.Outline((0, 0), (2, 0), (2, 2), (0, 2)) }) },
        { "gap of an irrational width", "check.design.block-filled", p => p.EditPatch("block/four/patch/1", x => x with { Shape = Polygon.Rectangle(0, 0, 2, Surd.OfRoot2(new(577, 408))) }) },
        { "patch clockwise", "check.design.patch", p => p.EditPatch("block/four/patch/1", x => x with { Shape = PlanDraft.Outline((0, 0), (0, 2), (2, 2), (2, 0)) }) },
        { "patch that crosses itself", "check.design.patch", p => p.EditPatch("block/four/patch/1", x => x with { Shape = PlanDraft.Outline((0, 0), (2, 0), (0, 2), (2, 2)) }) },
        { "patch with a repeated corner", "check.design.patch", p => p.EditPatch("block/four/patch/1", x => x with { Shape = PlanDraft.Outline((0, 0), (0, 0), (2, 0), (2, 2), (0, 2)) }) },
        { "patch with a spike", "check.design.patch", p => p.EditPatch("block/four/patch/1", x => x with { Shape = PlanDraft.Outline((0, 0), (3, 0), (2, 0), (2, 2), (0, 2)) }) },
        { "patch of two corners", "check.design.patch", p => p.EditPatch("block/four/patch/1", x => x with { Shape = PlanDraft.Outline((0, 0), (2, 0)) }) },
        { "block moved by a step", "check.design.top-filled", p => p.EditDesign(d => d with { Placements = d.Placements.SetItem(0, d.Placements[0] with { Motion = Motion.Shift(2, 2 + (Surd)Step) }) }) },
        { "block placed twice", "check.design.top-filled", p => p.EditDesign(d => d with { Placements = d.Placements.Add(d.Placements[0] with { Id = new("place/r9/c9") }) }) },
        { "block left out", "check.design.top-filled", p => p.EditDesign(d => d with { Placements = d.Placements.RemoveAt(0) }) },
        { "border too narrow", "check.design.top-filled", p => p.EditPatch("frame/border/1/patch/4", x => x with { Shape = Polygon.Rectangle(0, 0, 20, new Rational(15, 8)) }) },
        { "top larger than its parts", "check.design.top-filled", p => p.EditDesign(d => d with { Width = d.Width + Step }) },
        { "unknown block", "check.design.unknown-block", p => p.EditDesign(d => d with { Placements = d.Placements.SetItem(0, d.Placements[0] with { Block = "none" }) }) },
        { "block stretched in its place", "check.design.motion", p => p.EditDesign(d => d with { Placements = d.Placements.SetItem(0, d.Placements[0] with { Motion = Motion.Identity with { XX = 2 } }) }) },
        { "top of no size", "check.design.size", p => p.EditDesign(d => d with { Height = Length.Zero }) },
        { "role of a patch changed", "check.sewing.patch", p => p.EditPatch("block/four/patch/1", x => x with { Role = "sky" }) },
        { "role of a border changed", "check.sewing.patch", p => p.EditPatch("frame/border/1/patch/3", x => x with { Role = "sky" }) },
        { "another block in a place", "check.sewing.placement", p => p.EditDesign(d => d with { Placements = d.Placements.SetItem(0, d.Placements[0] with { Block = "triangles" }) }) },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_design_is_refused(string name) => Wrong.MustBeRefused(name);
}
