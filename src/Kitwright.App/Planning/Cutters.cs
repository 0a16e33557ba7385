using Kitwright.Cutting;
using Kitwright.Piecing;

namespace Kitwright.App.Planning;

/// <summary>The cutting engine under a work limit, by the limit's name.</summary>
public static class Cutters
{
    public static CutCloth Named(string budget, CancellationToken cancel)
    {
        _ = budget;
        _ = cancel;
        return FirstFit.Plan;
    }
}
