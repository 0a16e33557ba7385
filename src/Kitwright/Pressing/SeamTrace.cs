using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>
/// Follows every recipe's verbs to find where its seams end up, how long they are, what lies beside them, and where
/// they meet. Each unit is followed once, and hands on to larger ones only the seams that reach its edge.
/// </summary>
/// <remarks>That the recipes make the quilt is the checker's to say; this looks only at seams.</remarks>
public sealed record SeamTrace(ImmutableDictionary<PathId, UnitTrace> Units)
{
    public UnitTrace Of(PathId recipe) => Units[recipe];

    /// <param name="lightness">Of a role's cloth: CIELAB L*, 0 to 100.</param>
    public static SeamTrace Of(SewingPlan sewing, ImmutableArray<CutPiece> pieces, Func<string, double> lightness, double seam)
    {
        var cut = pieces.ToDictionary(piece => piece.Id);
        var units = new Dictionary<PathId, UnitTrace>();
        foreach (var recipe in sewing.Recipes)
        {
            units[recipe.Id] = new RecipeTrace(recipe, cut, units, lightness, seam).Run();
        }

        return new(units.ToImmutableDictionary());
    }

    public static SeamTrace Of(QuiltPlan plan) =>
        Of(plan.Sewing, plan.Pieces, ClothLightness.OfRoles(plan.Fabrics), plan.Seam.InInches.ToDouble());
}
