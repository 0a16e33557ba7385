using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>The drawing of one sewing step, whatever its kind: what goes into it, how it is pressed, what comes out.</summary>
/// <param name="Word">What stands at a part: the label of a piece, or the step that made a unit.</param>
public sealed record StepPicture(QuiltPlan Plan, Func<string, Paint> Fill, Func<PathId, string> Word)
{
    /// <summary>Where all seams of the plan lie.</summary>
    internal SeamTrace Seams { get; } = SeamTrace.Of(Plan);

    private PressingReport? meetings;

    /// <summary>Where seams of a step meet that do not nest, in the unit's coordinates.</summary>
    internal ImmutableArray<Spot> Unnested(Recipe recipe) => (meetings ??= PressingReport.Of(Plan, Seams)).Of(recipe.Id)?.Others ?? [];

    /// <summary>As large as fits, in points, and never larger than <paramref name="mostScale"/> points to the inch.</summary>
    public Picture Of(Recipe recipe, double width, double height, double mostScale = 13)
    {
        if (recipe.Picture.Parts.Length > 1)
        {
            return new ExplodedDrawing(this, recipe).Fit(width, height, mostScale);
        }

        if (recipe.Picture.Parts is [var only])
        {
            return Single(recipe, only, width, height, mostScale);
        }

        return recipe.Kind is "joined-strip" or "lengthwise-strip"
            ? new EndToEndDrawing(this, recipe).Fit(width, height, mostScale)
            : new TechniqueDrawing(this, recipe).Fit(width, height, mostScale);
    }

    /// <summary>A block that is one piece, with its word below.</summary>
    private Picture Single(Recipe recipe, UnitPart only, double width, double height, double mostScale)
    {
        var size = UnitDrawing.Size(Plan, recipe);
        var scale = Math.Min(mostScale, Math.Min(width / size.Width, (height - Look.Label.Leading) / size.Height));
        double wide = size.Width * scale,
            high = size.Height * scale;
        var word = SetText.Of(Word(only.Of), Look.Label);
        var unit = new Group([UnitDrawing.Of(Plan, recipe, Fill, Look.Edge)]) { Transform = Affine.Scale(scale, scale) };
        return new(
            new Group([unit, new TextLine(word, new((wide - word.Width) / 2, high + Look.Label.Leading))]),
            wide,
            high + Look.Label.Leading + 3
        );
    }

    internal CutPiece? PieceOf(PathId id) => Plan.Pieces.FirstOrDefault(piece => piece.Id == id);
}
