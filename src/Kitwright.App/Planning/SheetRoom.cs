using System.Collections.Immutable;
using Kitwright.Checking.Sheets;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Optimise.Cutting;
using Kitwright.Optimise.Sheets;

namespace Kitwright.App.Planning;

/// <summary>
/// Pieces from sheets: planned by the engine, checked, and by first fit where the check fails. What is short is a finding.
/// </summary>
public static class SheetRoom
{
    /// <summary>Places of findings about pieces are the pieces' ids.</summary>
    public static Checked<SheetPlan> Plan(SheetProblem problem, WorkBudget budget, int seed, CancellationToken cancel)
    {
        // What cannot be cut at all is said, and the rest is planned as if it had not been asked for.
        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(SheetIntake.Of(problem).Findings);
        var impossible = findings.Select(f => f.Place).ToHashSet();
        problem = problem with { Demand = [.. problem.Demand.Where(d => !impossible.Contains(d.Piece.Value))] };
        var planned = SheetCutter.Cut(problem, budget, seed, cancel);
        findings.AddRange(planned.Findings);
        if (planned.Value is not { } plan)
        {
            return new(null, findings.ToImmutable());
        }

        var check = SheetChecker.Check(plan);
        if (!check.IsEmpty)
        {
            findings.AddRange(check.Select(f => f with { Weight = Weight.Note }));
            findings.Add(Finding.NoteOf("cutlist.plan-refused", "plan"));
            var simple = SheetCutter.FirstFit(problem);
            if (simple is null || !SheetChecker.Check(simple).IsEmpty)
            {
                return new(null, [.. findings, Finding.Of("plan.refused", "plan")]);
            }

            plan = simple;
        }

        foreach (var shortage in plan.Short)
        {
            var demand = plan.Problem.Demand.First(d => d.Piece == shortage.Piece);
            findings.Add(
                Finding.Of(
                    "cutlist.short",
                    shortage.Piece.Value,
                    ("label", demand.Label),
                    ("count", shortage.Count),
                    ("wanted", demand.Count),
                    ("proved", plan.Proof.EnoughExcluded ? "yes" : "no")
                )
            );
        }

        return new(plan, findings.ToImmutable());
    }
}
