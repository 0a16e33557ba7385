using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Cloths;

/// <summary>
/// The claim that no way of cutting takes less: recomputed from the integers that come with it, and held against the
/// length and the claimed status.
/// </summary>
internal static class BoundRules
{
    public static void Check(ClothPlan cloth, FindingList findings)
    {
        var proof = cloth.Proof;
        var place = cloth.Id.Value;
        var sum = LengthRules.SumOfHeights(cloth);
        if (proof.Bound > sum)
        {
            findings.Add("check.cloth.bound-above", place, Say.Inches(proof.Bound), Say.AtMost(Say.Inches(sum)));
            return;
        }

        var proved = proof.Bound == sum;
        var searched = proof.Status == ProofStatus.ProvedBySearch || (proof.Status == ProofStatus.Within && proof.Searched);
        if (proved != proof.Status is ProofStatus.Proved or ProofStatus.ProvedBySearch || searched != proof.Searched)
        {
            findings.Add("check.cloth.status", place, Say.Inches(proof.Bound), Say.Inches(sum));
        }

        if (Grid.Of(cloth) is not { } grid)
        {
            findings.Add("check.cloth.bound-figures", place);
            return;
        }

        var given =
            proof.Cases is { } cases ? CaseBound.Of(cloth, grid, cases)
            : proof.Duals.IsEmpty ? AreaBound.Of(grid)
            : FarleyBound.Of(grid, proof.Scale);
        if (given is not { } least)
        {
            findings.Add("check.cloth.bound-cases", place);
            return;
        }

        var bound = proof.Unit * new Rational(NextSum.Of(grid.Heights, least), 1);
        // What a search added to the bound is its word; that it added something is not.
        var agrees = searched ? bound < proof.Bound : bound == proof.Bound;
        if (!agrees)
        {
            findings.Add("check.cloth.bound", place, Say.Inches(proof.Bound), Say.Inches(bound));
        }
    }
}
