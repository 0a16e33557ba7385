using Kitwright.Optimise.Cutting;
using Kitwright.Piecing;

namespace Kitwright.App.Planning;

/// <summary>The cutting engine under a work limit, by the limit's name; equal problems are solved once.</summary>
public static class Cutters
{
    /// <summary>The names of the limits, from the shortest to the longest search.</summary>
    public static IReadOnlyList<string> Budgets { get; } =
        [WorkBudget.WhileYouType.Name, WorkBudget.Normal.Name, WorkBudget.Thorough.Name];

    /// <param name="watch">Told of every better length and bound, from the thread that searches.</param>
    public static CutCloth Named(string budget, CancellationToken cancel, Action<CutStep>? watch = null)
    {
        var limit = Limit(budget);
        return problem =>
            ClothCutter.Cut(
                problem,
                limit,
                cancel,
                watch is null ? null : new Watching(step => watch(new(problem.Letter, step.Length, step.Bound)))
            );
    }

    public static WorkBudget Limit(string budget) =>
        budget switch
        {
            "while-you-type" => WorkBudget.WhileYouType,
            "thorough" => WorkBudget.Thorough,
            _ => WorkBudget.Normal,
        };

    // Unlike the framework's own, at once and in the order of what happens.
    private sealed class Watching(Action<CutProgress> watch) : IProgress<CutProgress>
    {
        public void Report(CutProgress value) => watch(value);
    }
}
