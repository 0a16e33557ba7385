using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>The last recipe's unit is the quilt top: every block in its place, and every patch of the frame.</summary>
internal static class TopRule
{
    public static void Check(Recipe recipe, Design design, Face[] faces, Length seam, FindingList findings, Effort effort)
    {
        var finished = UnitOutline.Finished(recipe, seam);
        if (recipe.Width - (seam * 2) != design.Width || recipe.Height - (seam * 2) != design.Height)
        {
            findings.Add(
                "check.sewing.top-size",
                recipe.Id.Value,
                Say.Size(finished[2].X, finished[2].Y),
                Say.Size(design.Width, design.Height)
            );
            return;
        }

        var view = new View(Leaves.Of(faces, finished, effort), effort);
        var blocks = design.Blocks.ToLookup(b => b.Id, StringComparer.Ordinal);
        foreach (var placement in design.Placements)
        {
            if (blocks[placement.Block].FirstOrDefault() is { } block && !view.Shows(placement, block))
            {
                findings.Add("check.sewing.placement", placement.Id.Value, ("block", block.Name));
            }
        }

        foreach (var patch in design.Patches)
        {
            findings.Add(PatchRule.Check("check.sewing.patch", patch.Id, patch, view));
        }
    }
}
