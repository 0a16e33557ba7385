using Kitwright.Checking.Exact;
using Kitwright.Checking.Showing;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Designs;

/// <summary>
/// The design itself: patches are polygons, a block's patches fill it, and blocks and frame together fill the top.
/// </summary>
internal static class DesignRules
{
    public static void Check(Design design, FindingList findings, Effort effort)
    {
        var sound = IsSized("design", design.Width, design.Height, findings);
        foreach (var block in design.Blocks)
        {
            sound &= IsSized(PlaceOf(block).Value, block.Width, block.Height, findings);
            sound &= ArePolygons(block.Patches, findings, effort);
        }

        sound &= ArePolygons(design.Patches, findings, effort);
        sound &= ArePlaced(design, findings);
        if (!sound)
        {
            return;
        }

        foreach (var block in design.Blocks)
        {
            var edges = new EdgeSum();
            edges.Add(PlaceOf(block), View.Rectangle(block), -1);
            Add(edges, block.Patches, effort);
            Report(edges, "check.design.block-filled", PlaceOf(block).Value, findings);
        }

        var top = new EdgeSum();
        top.Add(new("design"), Shape.Rectangle(0, 0, design.Width, design.Height), -1);
        Add(top, design.Patches, effort);
        var blocks = design.Blocks.ToLookup(b => b.Id, StringComparer.Ordinal);
        foreach (var placement in design.Placements)
        {
            effort.Spend(4);
            top.Add(placement.Id, View.Rectangle(blocks[placement.Block].First()).Moved(placement.Motion), 1);
        }

        Report(top, "check.design.top-filled", "design", findings);
    }

    private static PathId PlaceOf(BlockDesign block) => default(PathId).Child("block", block.Id);

    private static void Add(EdgeSum edges, IEnumerable<Patch> patches, Effort effort)
    {
        foreach (var patch in patches)
        {
            effort.Spend(patch.Shape.Corners.Length);
            edges.Add(patch.Id, new([.. patch.Shape.Corners]), 1);
        }
    }

    private static void Report(EdgeSum edges, string rule, string whole, FindingList findings)
    {
        if (edges.FirstOpen() is { } open)
        {
            findings.Add(
                rule,
                open.Place.Value,
                ("whole", whole),
                ("x", Say.Inches(open.At.X)),
                ("y", Say.Inches(open.At.Y))
            );
        }
    }

    private static bool IsSized(string place, Length width, Length height, FindingList findings)
    {
        if (width.Sign > 0 && height.Sign > 0)
        {
            return true;
        }

        findings.Add("check.design.size", place, ("width", width), ("height", height));
        return false;
    }

    private static bool ArePolygons(IEnumerable<Patch> patches, FindingList findings, Effort effort)
    {
        var sound = true;
        foreach (var patch in patches)
        {
            var corners = patch.Shape.Corners;
            effort.Spend(SimplePolygon.Steps(corners.Length));
            if (SimplePolygon.Fault(corners.AsSpan()) is { } fault)
            {
                findings.Add("check.design.patch", patch.Id.Value, ("fault", fault));
                sound = false;
            }
        }

        return sound;
    }

    private static bool ArePlaced(Design design, FindingList findings)
    {
        var sound = true;
        var known = design.Blocks.Select(b => b.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var placement in design.Placements)
        {
            if (!known.Contains(placement.Block))
            {
                findings.Add("check.design.unknown-block", placement.Id.Value, ("block", placement.Block));
                sound = false;
            }
            else if (!Rigid.Keeps(placement.Motion))
            {
                findings.Add("check.design.motion", placement.Id.Value);
                sound = false;
            }
        }

        return sound;
    }
}
