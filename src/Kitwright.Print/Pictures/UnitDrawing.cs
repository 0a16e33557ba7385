using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;

namespace Kitwright.Print.Pictures;

/// <summary>What a sewn unit shows when it is finished: its patches, and whole blocks where it holds them.</summary>
public static class UnitDrawing
{
    /// <summary>Finished size in inches, from the upper left corner.</summary>
    public static Box Size(QuiltPlan plan, Recipe recipe) =>
        new(
            0,
            0,
            (recipe.Width - (plan.Seam * 2)).InInches.ToDouble(),
            (recipe.Height - (plan.Seam * 2)).InInches.ToDouble()
        );

    /// <summary>In inches, y down.</summary>
    public static Group Of(QuiltPlan plan, Recipe recipe, Func<string, Paint> fill, Stroke? seams) =>
        new([.. Patches(plan, recipe).Select(patch => BlockPicture.PatchShape(patch, fill, seams))])
        {
            Transform = new(1, 0, 0, -1, 0, Size(plan, recipe).Height),
            Id = recipe.Id,
            Class = "unit",
        };

    /// <summary>All that it shows, in its own coordinates: its patches and those of the blocks within it.</summary>
    internal static IEnumerable<Patch> Patches(QuiltPlan plan, Recipe recipe) =>
        recipe.Picture.Patches.Concat(
            recipe.Picture.Tiles.SelectMany(tile =>
                plan.Design.Blocks.First(block => block.Id == tile.Block)
                    .Patches.Select(patch => patch with { Shape = patch.Shape.Moved(tile.Motion) })
            )
        );

    /// <summary>For a screen: <c>viewBox</c> in inches, one path per patch with its <c>data-id</c>.</summary>
    public static string Svg(QuiltPlan plan, Recipe recipe, Func<string, Paint> fill, string label, string keyPrefix = "") =>
        SvgCanvas.Write(Of(plan, recipe, fill, Look.Seam), new(Size(plan, recipe), label, keyPrefix, Digits: 4, Hairlines: true));
}
