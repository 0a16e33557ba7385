using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Optimise.Cutting;

/// <summary>What a plan is asked for, in the order of its problem: plans are compared by the first thing in which they differ.</summary>
internal sealed class Aims(ClothProblem problem, StripGrid grid) : IComparer<ImmutableArray<CutStrips>>
{
    private readonly PurchaseSteps steps = new(problem, grid);

    public ImmutableArray<CutAim> Order => problem.Order;

    /// <summary>Whether cloth counts before all labor.</summary>
    public bool ClothFirst => !Before(CutAim.Settings, CutAim.Purchase, CutAim.Leftover) && !Before(CutAim.Cuts, CutAim.Purchase, CutAim.Leftover);

    /// <summary>Whether every inch counts before any labor: the end of the length is the largest leftover.</summary>
    public bool ByTheInch =>
        problem.Goal == CutGoal.ByTheInch
        || (Before(CutAim.Leftover, CutAim.Settings, CutAim.Settings) && Before(CutAim.Leftover, CutAim.Cuts, CutAim.Cuts));

    public bool SettingsBeforeCuts => Before(CutAim.Settings, CutAim.Cuts, CutAim.Cuts);

    /// <summary>For a length, the greatest one that would be better; in units.</summary>
    public long Better(long length) => ByTheInch ? length - 1 : steps.LongestBelow(length);

    /// <summary>The greatest sum of heights that is as good as these strips'; in units.</summary>
    public long Longest(ImmutableArray<CutStrips> strips) => ByTheInch ? CutStrips.TotalHeight(strips) : steps.LongestInStep(strips);

    /// <summary>Whether some strips take no more cloth than others, as far as cloth counts first.</summary>
    public bool TakesNoMore(ImmutableArray<CutStrips> strips, ImmutableArray<CutStrips> than) =>
        ByTheInch ? steps.LengthOf(strips) <= steps.LengthOf(than) : steps.Purchase(strips) <= steps.Purchase(than);

    public int Compare(ImmutableArray<CutStrips> x, ImmutableArray<CutStrips> y)
    {
        foreach (var aim in problem.Order)
        {
            var sign = aim switch
            {
                CutAim.Purchase when problem.Goal == CutGoal.ByTheStep => steps.Purchase(x).CompareTo(steps.Purchase(y)),
                CutAim.Purchase or CutAim.Leftover => steps.LengthOf(x).CompareTo(steps.LengthOf(y)),
                CutAim.Settings => Labor.SettingsOf(grid, x).Count.CompareTo(Labor.SettingsOf(grid, y).Count),
                CutAim.Cuts => Labor.CutsOf(grid, x).CompareTo(Labor.CutsOf(grid, y)),
                // Strips are planned without surplus.
                _ => 0,
            };
            if (sign != 0)
            {
                return sign;
            }
        }

        return 0;
    }

    /// <summary>Whether an aim counts before both others.</summary>
    private bool Before(CutAim aim, CutAim first, CutAim second) =>
        problem.Order.IndexOf(aim) < Math.Min(problem.Order.IndexOf(first), problem.Order.IndexOf(second));
}
