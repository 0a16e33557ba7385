using Kitwright.App.Web;
using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;
using Kitwright.Print.Pictures;
using Kitwright.Sewing;
using Kitwright.Words;

namespace Kitwright.App.Features.SewStop;

/// <summary>The booklet's drawings of the steps, for the screen: in flat colors, all at one scale of letters.</summary>
public static class StepDrawing
{
    /// <summary>User units: the letters of the drawing come to some 12 pixels where a column is 340 wide.</summary>
    private const double Width = 260;
    private const double Height = 200;

    /// <summary>Words under the outermost parts stick out by as much.</summary>
    private const double Margin = 20;

    public static StepPicture Pictures(QuiltPlan plan, Shelf shelf)
    {
        var fills = new FabricFills(plan, shelf);
        var fabrics = plan.Fabrics.SelectMany(f => f.Roles.Select(role => (role, f))).ToDictionary(x => x.role, x => x.f);
        var labels = plan.Pieces.ToDictionary(piece => piece.Id, piece => piece.Label);
        var numbers = Directions.Of(plan).ToDictionary(step => step.Recipe, step => step.Number);
        return new(
            plan,
            role => Paint.Of(fills.ColorOf(fabrics[role])),
            id => labels.GetValueOrDefault(id) ?? Saying.Say("step.part", ("number", numbers[id]))
        );
    }

    public static string Svg(StepPicture pictures, Recipe recipe, Catalog language)
    {
        var picture = pictures.Of(recipe, Width - (2 * Margin), Height);
        // Every drawing stands in the middle of the same width, so that a small unit is not blown up.
        var box = new Box((picture.Width - Width) / 2, 0, Width, picture.Height);
        return SvgCanvas.Write(picture.Drawing, new(box, Saying.Say(language, recipe.Name)));
    }
}
