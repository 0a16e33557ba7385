using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>Units of two rows of two patches whose seams meet in the middle: their last seam can be spun.</summary>
internal static class FourPatches
{
    public static bool Is(Recipe recipe) =>
        recipe.Picture.Tiles.IsEmpty
        && recipe.Picture.Parts.Length == 2
        && recipe.Picture.Patches.Length == 4
        && recipe.Makes.Length == 1
        && recipe.Outline is null
        && recipe.Verbs.OfType<Use>().Count() == 2
        && recipe.Verbs.OfType<Press>().Count() == 1
        && recipe.Picture.Patches[0].Shape.Corners.Any(corner => recipe.Picture.Patches.All(patch => patch.Shape.Corners.Length == 4 && patch.Shape.Corners.Contains(corner)));

    /// <summary>With the last seam of each four-patch swirled.</summary>
    public static SewingPlan Spun(SewingPlan sewing) =>
        new([.. sewing.Recipes.Select(r => Is(r) ? r with { Verbs = [.. r.Verbs.Select(v => v is Press press ? press with { Toward = PressToward.Swirled } : v)] } : r)]);
}
