using Kitwright.App.Features.Deciding;
using Kitwright.App.Web;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Features.Desk;

/// <summary>What lies on the desk at one address: the quilt, its colorway, its plan and what is touched.</summary>
/// <param name="Quilt">The quilt as it is shown: with the changes that are tried.</param>
/// <param name="Colorway">The colorway that is shown; null where the quilt has none.</param>
/// <param name="Kept">The plan without the changes that are tried.</param>
public sealed record Work(
    DeskAddress Address,
    Quilt Quilt,
    Colorway? Colorway,
    Planned Planned,
    Planned Kept,
    Selection Selection
)
{
    public QuiltPlan? Plan => Planned.Plan;

    /// <summary>How the quilt looks; as it is kept, where the changes that are tried cannot be.</summary>
    public Design Design => Planned.Design ?? Kept.Design!;

    /// <summary>Null where no quilt has the name.</summary>
    public static Work? At(DeskAddress address, IWorkbench workbench)
    {
        if (workbench.Quilts.FirstOrDefault(q => q.Slug == address.Slug)?.Quilt is not { } kept)
        {
            return null;
        }

        var name = ((address.Colorway is null ? null : kept.Colorway(address.Colorway)) ?? kept.Colorways.FirstOrDefault())?.Name;
        var (quilt, findings) = Trial.Parse(address.Try).Apply(kept, name, workbench.Shelf);
        var planned = workbench.Plan(quilt, name);
        planned = planned with { Findings = [.. findings, .. planned.Findings] };
        return new(
            address,
            quilt,
            name is null ? null : quilt.Colorway(name),
            planned,
            address.Try is null ? planned : workbench.Plan(kept, name),
            Selection.Of(address.At, planned)
        );
    }
}
