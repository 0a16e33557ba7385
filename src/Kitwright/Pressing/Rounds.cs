using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>Steps that join plain strips to one side of a pieced unit, or to two opposite ones.</summary>
public static class Rounds
{
    private static readonly Length RulerLine = Length.Inches(0, 1, 16);

    /// <summary>Finished width of the strip joined last, up to a line of the ruler where it is on none; null where the step is no round.</summary>
    public static Length? Last(Recipe recipe) =>
        recipe.Kind is "joined" or "block"
        && recipe.Picture.Parts.Length is 2 or 3
        && recipe.Verbs.OfType<Use>().Count() == 1
        && recipe.Verbs.OfType<Take>().Count() == recipe.Picture.Parts.Length - 1
        && recipe.Verbs.LastOrDefault(v => v is Take or Use) is Take
            ? Shorter(recipe.Picture.Parts[^1].Outline)
            : null;

    private static Length Shorter(Polygon strip)
    {
        var (low, high) = strip.Bounds();
        Surd width = high.X - low.X,
            height = high.Y - low.Y;
        var shorter = width < height ? width : height;
        return shorter.IsRational ? Length.Inches(shorter.One) : shorter.RoundUpTo(RulerLine);
    }
}
