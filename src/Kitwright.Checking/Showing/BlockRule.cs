using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Showing;

/// <summary>A unit that is said to be a block of the design shows that block, patch for patch.</summary>
internal static class BlockRule
{
    public static void Check(Recipe recipe, BlockDesign block, Face[] faces, Length seam, FindingList findings, Effort effort)
    {
        var finished = UnitOutline.Finished(recipe, seam);
        if (recipe.Width - (seam * 2) != block.Width || recipe.Height - (seam * 2) != block.Height)
        {
            findings.Add(
                "check.sewing.block-size",
                recipe.Id.Value,
                Say.Size(finished[2].X, finished[2].Y),
                Say.Size(block.Width, block.Height),
                ("block", block.Name)
            );
            return;
        }

        var view = new View(Leaves.Of(faces, finished, effort), effort);
        foreach (var patch in block.Patches)
        {
            findings.Add(PatchRule.Check("check.sewing.patch", recipe.Id, patch, view));
        }
    }
}
