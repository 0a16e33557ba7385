using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>Which sums of strip heights end in the same saleable length.</summary>
internal sealed class PurchaseSteps(ClothProblem problem, StripGrid grid)
{
    private readonly Length fixedPart = problem.Terms.Straightening + grid.Margin(problem.SpareStrips);

    /// <summary>True where even a plan as short as the bound would have to be bought as these strips are.</summary>
    public bool IsLeast(ImmutableArray<CutStrips> strips, long bound) => Purchase(bound) >= Purchase(strips);

    public Length Purchase(ImmutableArray<CutStrips> strips) => Purchase(CutStrips.TotalHeight(strips));

    /// <summary>The greatest sum of heights, in units, that is bought as these strips are.</summary>
    public long LongestInStep(ImmutableArray<CutStrips> strips) =>
        (long)((Purchase(strips) - fixedPart) / grid.Unit).Floor();

    private Length Purchase(long length) => problem.Terms.Purchase(fixedPart + (grid.Unit * (Rational)length));
}
