using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>Which sums of strip heights end in the same saleable length.</summary>
internal sealed class PurchaseSteps(ClothProblem problem, StripGrid grid)
{
    private readonly Length fixedPart = problem.Terms.Straightening + grid.Margin(problem.SpareStrips);

    /// <summary>Squaring again takes no less, however few the strips.</summary>
    private readonly Length leastSquaring = problem.Terms.SquaringAgain(grid.FewestStrips);

    /// <summary>The greatest sum of heights, in units, for which less is bought; -1 where there is none.</summary>
    public long LongestBelow(long length)
    {
        var bought = Purchase(length, leastSquaring);
        var (below, not) = (-1L, length);
        while (not - below > 1)
        {
            var middle = (below + not) / 2;
            (below, not) = Purchase(middle, leastSquaring) < bought ? (middle, not) : (below, middle);
        }

        return below;
    }

    public Length Purchase(ImmutableArray<CutStrips> strips) => Purchase(CutStrips.TotalHeight(strips), SquaringIn(strips));

    /// <summary>What the strips take, squaring again between them included.</summary>
    public Length LengthOf(ImmutableArray<CutStrips> strips) => (grid.Unit * (Rational)CutStrips.TotalHeight(strips)) + SquaringIn(strips);

    /// <summary>The greatest sum of heights, in units, that is bought as these strips are.</summary>
    public long LongestInStep(ImmutableArray<CutStrips> strips) =>
        (long)((Purchase(strips) - fixedPart - SquaringIn(strips)) / grid.Unit).Floor();

    private Length SquaringIn(ImmutableArray<CutStrips> strips) => problem.Terms.SquaringAgain(strips.Sum(s => (long)s.Times));

    private Length Purchase(long length, Length squaring) => problem.Terms.Purchase(fixedPart + squaring + (grid.Unit * (Rational)length));
}
