using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Pressing;

namespace Kitwright.Accuracy;

/// <summary>The units of a plan as the model of accuracy sees them, in the order of sewing.</summary>
/// <remarks>
/// Units are rectangles that are too wide or too high by a little. A unit that a technique makes is as far off as its
/// piece was cut, less what its seams take, in the measure in which the seams lie between piece and unit. Slanting rows
/// are taken along their own way.
/// </remarks>
internal sealed record QuiltShape(ImmutableArray<UnitShape> Units)
{
    /// <summary>Further than this a unit is not one piece less its seams, but a length off a longer strip.</summary>
    private const double MostShrink = 8;

    public static QuiltShape Of(QuiltPlan plan)
    {
        var trace = SeamTrace.Of(plan);
        var index = plan.Sewing.Recipes.Select((r, i) => (r.Id, i)).ToDictionary(x => x.Id, x => x.i);
        var pieces = plan.Pieces.ToDictionary(p => p.Id);
        return new([.. plan.Sewing.Recipes.Select(recipe => UnitOf(recipe, plan, trace.Of(recipe.Id), index, pieces))]);
    }

    private static UnitShape UnitOf(Recipe recipe, QuiltPlan plan, UnitTrace trace, Dictionary<PathId, int> index, Dictionary<PathId, CutPiece> pieces)
    {
        var joined = recipe.Picture.Parts.Length > 1 && recipe.Verbs.OfType<Press>().Count() == recipe.Picture.Parts.Length - 1;
        var along = joined ? AlongOf(recipe) : default;
        ImmutableArray<PartShape> parts = joined
            ? [.. recipe.Verbs.Where(v => v is Take or Use).Select(v => PartOf(v, along, index, plan, pieces))]
            : [];
        var takes = recipe.Verbs.OfType<Take>().Select(t => pieces[t.Piece]).ToArray();
        var cut = takes.Length == 0 ? null : takes.MaxBy(p => p.Width.InInches * p.Height.InInches);
        double Shrink(Measure.Length size, Measure.Length whole) => (whole - size).InInches.ToDouble() / plan.Seam.InInches.ToDouble() is var s and > 0 and <= MostShrink ? s : 0;
        return new(
            recipe.Copies,
            recipe.Shows is not null && recipe.Shows != Recipe.WholeTop,
            parts,
            cut is null || joined ? 0 : Shrink(recipe.Width, Longer(cut, recipe.Width >= recipe.Height)),
            cut is null || joined ? 0 : Shrink(recipe.Height, Longer(cut, recipe.Height > recipe.Width)),
            Math.Abs(along.X) >= Math.Abs(along.Y),
            recipe.Shows != Recipe.WholeTop && recipe.Picture.Tiles.IsEmpty && EndsPlain(parts, plan),
            trace.Points,
            recipe.Verbs.OfType<Trim>().Any(t => t.Counted)
        );
    }

    /// <summary>A round: plain cloth joined to a unit that was itself joined. A row of squares and points is no such thing.</summary>
    private static bool EndsPlain(ImmutableArray<PartShape> parts, QuiltPlan plan) =>
        parts is [.., { Unit: < 0 }] && parts.Any(p => p.Unit >= 0 && plan.Sewing.Recipes[p.Unit].Picture.Parts.Length > 1);

    private static Measure.Length Longer(CutPiece piece, bool longer) =>
        longer ? Measure.Length.Max(piece.Width, piece.Height) : Measure.Length.Min(piece.Width, piece.Height);

    /// <summary>The way in which parts follow one another: across the first seam.</summary>
    private static Spot AlongOf(Recipe recipe)
    {
        var line = recipe.Verbs.OfType<Sew>().First().Line;
        return (Spot.Of(line.To) - Spot.Of(line.From)).Unit.Left;
    }

    private static PartShape PartOf(Verb verb, Spot along, Dictionary<PathId, int> index, QuiltPlan plan, Dictionary<PathId, CutPiece> pieces)
    {
        var (unit, motion) = verb switch
        {
            Use use => (index[use.Unit], use.Motion),
            Take take => (-1, take.Motion),
            _ => (-1, Motion.Identity),
        };
        var ownX = new Spot(motion.XX.ToDouble(), motion.YX.ToDouble());
        var turned = Math.Abs(Spot.Dot(ownX, along)) < 0.6;
        return new(unit, turned, unit >= 0 && plan.Sewing.Recipes[unit].Kind is "joined-strip" or "lengthwise-strip");
    }
}
