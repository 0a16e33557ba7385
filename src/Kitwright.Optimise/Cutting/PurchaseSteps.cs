using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>Which sums of strip heights end in the same saleable length.</summary>
internal sealed class PurchaseSteps(ClothProblem problem, StripGrid grid)
{
    /// <summary>The margin of every plan is at least this: the highest piece has to lie in some strip.</summary>
    private readonly int leastHighest = grid.WaysOf.Max(ways => ways.Min(way => grid.Ways[way].Height));

    /// <summary>True where even a plan as short as the bound would have to be bought as these strips are.</summary>
    public bool IsLeast(ImmutableArray<CutStrips> strips, long bound) => Purchase(bound, leastHighest) >= Purchase(strips);

    public Length Purchase(ImmutableArray<CutStrips> strips) =>
        Purchase(CutStrips.TotalHeight(strips), strips.Max(s => s.Pattern.Height));

    /// <summary>The greatest length, in units, of strips no higher than these that is bought as these are.</summary>
    public long LongestInStep(ImmutableArray<CutStrips> strips)
    {
        var room = Purchase(strips) - Fixed(strips.Max(s => s.Pattern.Height));
        return (long)(room / grid.Unit).Floor();
    }

    private Length Purchase(long length, int highest) => problem.Terms.Purchase(Fixed(highest) + (grid.Unit * (Rational)length));

    private Length Fixed(int highest) =>
        problem.Terms.Straightening + (grid.Unit * (Rational)((long)highest * problem.SpareStrips));
}
