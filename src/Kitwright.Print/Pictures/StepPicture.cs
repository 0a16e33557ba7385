using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;

namespace Kitwright.Print.Pictures;

/// <summary>The drawing of one sewing step, whatever its kind: what goes into it, how it is pressed, what comes out.</summary>
/// <param name="Word">What stands at a part: the label of a piece, or the step that made a unit.</param>
public sealed record StepPicture(QuiltPlan Plan, Func<string, Paint> Fill, Func<PathId, string> Word)
{
    /// <summary>As large as fits, in points, and never larger than <paramref name="mostScale"/> points to the inch.</summary>
    public Picture Of(Recipe recipe, double width, double height, double mostScale = 13)
    {
        if (recipe.Picture.Parts.Length > 1)
        {
            return new ExplodedDrawing(this, recipe).Fit(width, height, mostScale);
        }

        return recipe.Kind == "joined-strip"
            ? new EndToEndDrawing(this, recipe).Fit(width, height, mostScale)
            : new TechniqueDrawing(this, recipe).Fit(width, height, mostScale);
    }

    internal CutPiece? PieceOf(PathId id) => Plan.Pieces.FirstOrDefault(piece => piece.Id == id);
}
