using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>Which sums of strip heights end in the same saleable length.</summary>
internal sealed class PurchaseSteps(ClothProblem problem, StripGrid grid)
{
    private readonly Length fixedPart = problem.Terms.Straightening + grid.Margin(problem.SpareStrips);

    /// <summary>The greatest sum of heights, in units, for which less is bought; -1 where there is none.</summary>
    public long LongestBelow(long length)
    {
        var bought = Purchase(length);
        var (below, not) = (-1L, length);
        while (not - below > 1)
        {
            var middle = (below + not) / 2;
            (below, not) = Purchase(middle) < bought ? (middle, not) : (below, middle);
        }

        return below;
    }

    public Length Purchase(ImmutableArray<CutStrips> strips) => Purchase(CutStrips.TotalHeight(strips));

    /// <summary>The greatest sum of heights, in units, that is bought as these strips are.</summary>
    public long LongestInStep(ImmutableArray<CutStrips> strips) =>
        (long)((Purchase(strips) - fixedPart) / grid.Unit).Floor();

    private Length Purchase(long length) => problem.Terms.Purchase(fixedPart + (grid.Unit * (Rational)length));
}
