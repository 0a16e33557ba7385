using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Sewing;

namespace Kitwright.WorkTimes;

/// <summary>How long a quilt takes: cutting, and sewing step by step, in seconds of standard time.</summary>
/// <param name="Cutting">Strips, sub-cuts and trims of all cloths; borders and binding strips among them.</param>
/// <param name="Steps">Sewing, one entry a step in the order of the plan.</param>
/// <param name="Blocks">For each kind of block, one block from cut pieces to finished.</param>
public sealed record WorkSheet(double Cutting, ImmutableArray<StepWork> Steps, ImmutableArray<BlockWork> Blocks)
{
    public double Sewing => Steps.Sum(step => step.Seconds);

    public double All => Cutting + Sewing;

    public static WorkSheet Of(QuiltPlan plan, StandardTimes times, Allowances allowances)
    {
        var trace = SeamTrace.Of(plan);
        var meetings = PressingReport.Of(plan, trace).Steps.ToDictionary(step => step.Recipe, step => step.Each);
        ImmutableArray<StepWork> steps =
        [
            .. SewingSheet.Of(plan).Steps.Select(step => new StepWork(
                step.Recipe,
                allowances.Standard(Seconds(step, trace.Of(step.Recipe).SewnInches.Sum(), meetings.GetValueOrDefault(step.Recipe), times))
            )),
        ];
        return new(allowances.Standard(plan.Cloths.Sum(cloth => Cut(cloth, times))), steps, [.. BlocksOf(plan, steps)]);
    }

    private static double Seconds(StepCount step, double inches, int meetings, StandardTimes times) =>
        times.Of(Operation.StartChain, step.SeamsEach)
        + step.Runs
            * (
                times.Of(Operation.LayPair, step.SeamsEach)
                + times.Of(Operation.SewTenInches, inches / 10)
                + times.Of(Operation.Press, step.PressesEach)
                + times.Of(Operation.Pin, meetings)
                + times.Of(Operation.CutApart, step.CutsEach)
                + times.Of(Operation.Trim, step.TrimsEach)
            );

    private static double Cut(ClothPlan cloth, StandardTimes times) =>
        times.Of(Operation.CutStrip, cloth.Figures.Strips) + times.Of(Operation.SubCut, cloth.Figures.SubCuts + cloth.Figures.Trims);

    private static IEnumerable<BlockWork> BlocksOf(QuiltPlan plan, ImmutableArray<StepWork> steps)
    {
        // What one copy takes, with all that goes into it.
        var each = new Dictionary<PathId, double>();
        foreach (var (recipe, step) in plan.Sewing.Recipes.Zip(steps))
        {
            var parts = recipe.Verbs.OfType<Use>().Sum(use => each[use.Unit]);
            each[recipe.Id] = ((step.Seconds / recipe.Runs) + parts) / recipe.Makes.Length;
            if (recipe.Shows is { } block && block != Recipe.WholeTop)
            {
                yield return new(recipe.Id, recipe.Copies, each[recipe.Id]);
            }
        }
    }
}

/// <summary>One step, all its units.</summary>
public sealed record StepWork(PathId Recipe, double Seconds);

/// <summary>One kind of block.</summary>
/// <param name="Each">Seconds for one block, from cut pieces to finished.</param>
public sealed record BlockWork(PathId Recipe, int Copies, double Each);
