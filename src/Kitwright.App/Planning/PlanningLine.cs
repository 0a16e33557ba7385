using System.Collections.Immutable;
using Kitwright.Checking;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Optimise.Pressing;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Planning;

/// <summary>
/// The whole line for one quilt and colorway: plan with the optimizer, check by sewing it, fall back to the simple
/// plan where the check fails, and show no plan where that fails too.
/// </summary>
public static class PlanningLine
{
    public static PlannedQuilt Plan(
        Quilt quilt,
        Colorway? colorway,
        ImmutableArray<Fabric> fabrics,
        PlanOptions options,
        CutCloth cut
    )
    {
        var best = Attempt(quilt, colorway, fabrics, options, cut);
        if (best.Plan is null || !best.Faulty)
        {
            return best with { Plan = best.Faulty ? null : best.Plan };
        }

        var simple = Attempt(quilt, colorway, fabrics, options, FirstFit.Plan);
        var found = best.Findings.Select(f => f with { Weight = Weight.Note }).ToImmutableArray();
        return simple.Faulty || simple.Plan is null
            ? new(null, Trace.None, [.. found, .. simple.Findings, Finding.Of("plan.refused", "plan")])
            : new(simple.Plan, simple.Trace, [.. found, Finding.NoteOf("plan.fallback", "plan"), .. simple.Findings]);
    }

    private static PlannedQuilt Attempt(
        Quilt quilt,
        Colorway? colorway,
        ImmutableArray<Fabric> fabrics,
        PlanOptions options,
        CutCloth cut
    )
    {
        var planned = QuiltPlanner.Plan(quilt, colorway, fabrics, options, cut, CpSatPressing.Solver());
        // What the planner could not do it has said, with what to do; nothing is wrong with it that anybody should report.
        if (planned.Value is not { } plan || planned.Findings.Any(f => f.Weight == Weight.Fault))
        {
            return new(null, Trace.None, planned.Findings);
        }

        var check = PlanChecker.Check(plan);
        return new(plan, check.Trace, [.. planned.Findings, .. check.Findings]);
    }
}

/// <summary>A checked plan, where each patch comes from, and what was found; no plan where a fault leaves none.</summary>
public sealed record PlannedQuilt(QuiltPlan? Plan, Trace Trace, ImmutableArray<Finding> Findings)
{
    /// <summary>The words and units in which people read it.</summary>
    public Catalog Language { get; init; } = Catalog.English;

    public bool Faulty => Findings.Any(f => f.Weight == Weight.Fault);
}
