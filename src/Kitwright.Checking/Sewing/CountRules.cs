using System.Numerics;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>
/// What is taken and made, over all runs: every piece that is cut for sewing is sewn, no copy is used that was not
/// made, and no run is carried out in vain.
/// </summary>
internal static class CountRules
{
    public static void Check(QuiltPlan plan, FindingList findings)
    {
        var taken = new Dictionary<PathId, BigInteger>();
        var used = new Dictionary<PathId, BigInteger>();
        foreach (var recipe in plan.Sewing.Recipes)
        {
            if (recipe.Runs <= 0)
            {
                findings.Add("check.sewing.runs", recipe.Id.Value, Say.Count(recipe.Runs), Say.AtLeast(Say.Count(1)));
            }

            foreach (var verb in recipe.Verbs)
            {
                if (verb is Take take)
                {
                    taken[take.Piece] = taken.GetValueOrDefault(take.Piece) + recipe.Runs;
                }
                else if (verb is Use use)
                {
                    used[use.Unit] = used.GetValueOrDefault(use.Unit) + recipe.Runs;
                }
            }
        }

        Pieces(plan, taken, findings);
        Units(plan, used, findings);
    }

    private static void Pieces(QuiltPlan plan, Dictionary<PathId, BigInteger> taken, FindingList findings)
    {
        foreach (var piece in plan.Pieces)
        {
            var sewn = taken.GetValueOrDefault(piece.Id);
            if (piece.Id == plan.Binding.Piece)
            {
                sewn += plan.Binding.Strips;
            }

            if (sewn != piece.Count)
            {
                findings.Add("check.sewing.pieces-used", piece.Id.Value, Say.Count(sewn), Say.Count(piece.Count));
            }
        }
    }

    private static void Units(QuiltPlan plan, Dictionary<PathId, BigInteger> used, FindingList findings)
    {
        var tops = plan.Sewing.Recipes.Where(r => r.Shows == Recipe.WholeTop).ToArray();
        if (tops.Length != 1 || tops[0] != plan.Sewing.Recipes[^1])
        {
            findings.Add("check.sewing.no-top", "sewing", Say.Count(tops.Length), Say.Count(1));
        }

        foreach (var recipe in plan.Sewing.Recipes)
        {
            var needed = used.GetValueOrDefault(recipe.Id) + (recipe.Shows == Recipe.WholeTop ? 1 : 0);
            var made = (BigInteger)recipe.Makes.Length * recipe.Runs;
            if (made < needed)
            {
                findings.Add("check.sewing.units-short", recipe.Id.Value, Say.Count(made), Say.AtLeast(Say.Count(needed)));
            }
            else if (made - needed >= recipe.Makes.Length && recipe.Makes.Length > 0)
            {
                findings.Add("check.sewing.units-over", recipe.Id.Value, Say.Count(made), Say.Count(needed));
            }
        }
    }
}
