using Kitwright.App.Web;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Desk;

/// <summary>What lies on the desk at one address: the quilt, its colorway, its plan and what is touched.</summary>
/// <param name="Quilt">The quilt as it is shown.</param>
/// <param name="Colorway">The colorway that is shown; null where the quilt has none.</param>
public sealed record Work(DeskAddress Address, Quilt Quilt, Colorway? Colorway, Planned Planned, Selection Selection)
{
    public QuiltPlan? Plan => Planned.Plan;

    /// <summary>Null where no quilt has the name.</summary>
    public static Work? At(DeskAddress address, IWorkbench workbench)
    {
        var shelf = workbench.Quilts.FirstOrDefault(q => q.Slug == address.Slug);
        if (shelf is null)
        {
            return null;
        }

        var quilt = shelf.Quilt;
        var colorway =
            (address.Colorway is null ? null : quilt.Colorway(address.Colorway)) ?? quilt.Colorways.FirstOrDefault();
        var planned = workbench.Plan(quilt, colorway?.Name);
        return new(address, quilt, colorway, planned, Selection.Of(address.At, planned));
    }
}
