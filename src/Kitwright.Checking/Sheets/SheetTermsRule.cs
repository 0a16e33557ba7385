using Kitwright.Cutting.Sheets;

namespace Kitwright.Checking.Sheets;

/// <summary>What a plan of sheets supposes must be possible before anything in it can be measured.</summary>
internal static class SheetTermsRule
{
    /// <summary>False where nothing further should be looked at.</summary>
    public static bool Check(SheetPlan plan, FindingList findings)
    {
        var problem = plan.Problem;
        var terms = problem.Terms;
        var possible =
            terms.Stages is 2 or 3
            && terms.TrimAcross.Sign >= 0
            && terms.TrimAlong.Sign >= 0
            && Enum.IsDefined(terms.First)
            && Enum.IsDefined(terms.Last)
            && Enum.IsDefined(problem.Goal)
            && !terms.Folds.IsEmpty
            && terms.Folds.All(layers => layers is 1 or 2 or 4)
            && problem.Sheets.Select(sheet => sheet.Id).Distinct().Count() == problem.Sheets.Length
            && problem.Demand.Select(demand => demand.Piece).Distinct().Count() == problem.Demand.Length
            && problem.Demand.All(demand => demand.Count >= 0 && demand.Width.Sign > 0 && demand.Height.Sign > 0)
            && problem.Sheets.All(sheet => sheet.Cost.Sign >= 0 && sheet.Count is null or >= 0)
            // A cloth of open length is the only one.
            && (problem.Sheets.Length == 1 || problem.Sheets.All(sheet => sheet.Height is not null));
        if (!possible)
        {
            findings.Add("check.sheet.terms", "problem");
        }

        return possible;
    }
}
