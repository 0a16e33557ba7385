using Kitwright.Optimise.Cutting;
using Kitwright.Piecing;

namespace Kitwright.App.Planning;

/// <summary>The cutting engine under a work limit, by the limit's name; equal problems are solved once.</summary>
public static class Cutters
{
    public static CutCloth Named(string budget, CancellationToken cancel)
    {
        var limit = Limit(budget);
        return problem => ClothCutter.Cut(problem, limit, cancel);
    }

    public static WorkBudget Limit(string budget) =>
        budget switch
        {
            "while-you-type" => WorkBudget.WhileYouType,
            "thorough" => WorkBudget.Thorough,
            _ => WorkBudget.Normal,
        };
}
