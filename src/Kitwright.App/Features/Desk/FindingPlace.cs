using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.App.Features.Desk;

/// <summary>Where on the pages a finding belongs.</summary>
public static class FindingPlace
{
    /// <summary>Whether it is about an item or a part of it.</summary>
    public static bool IsAt(this Finding finding, PathId item) =>
        finding.Place == item.Value || finding.Place.StartsWith(item.Value + "/", StringComparison.Ordinal);

    /// <summary>The stop that shows its place; null for places outside the plan, as in a file.</summary>
    public static Stop? StopOf(Finding finding) =>
        finding.Place.Split('/')[0] switch
        {
            "cloth" or "piece" => Stop.Cut,
            "unit" or "block" or "top" => Stop.Sew,
            "kit" => Stop.Kits,
            _ => null,
        };

    /// <summary>The place itself, without what stands inside it: a recipe and not one of its acts.</summary>
    public static PathId ItemOf(Finding finding) => new(string.Join('/', finding.Place.Split('/').Take(2)));
}
