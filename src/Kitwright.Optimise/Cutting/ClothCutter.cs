using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Optimise.Cutting;

/// <summary>The cutting engine's front door.</summary>
public static class ClothCutter
{
    /// <summary>The best plan within the budget; first fit's where the optimizer fails in the machine.</summary>
    public static Checked<ClothPlan> Cut(
        ClothProblem problem,
        WorkBudget budget,
        CancellationToken cancellation = default,
        IProgress<CutProgress>? progress = null
    )
    {
        try
        {
            return ColumnGeneration.Plan(problem, budget, cancellation, progress);
        }
        catch (Exception fault) when (fault is DllNotFoundException or TypeInitializationException or OutOfMemoryException)
        {
            // The solver's native library is missing or the machine is full: a simple plan is better than none.
            return FirstFit.Plan(problem);
        }
    }
}
