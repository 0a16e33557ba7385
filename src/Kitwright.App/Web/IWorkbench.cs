using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Web;

/// <summary>Where the pages take everything from. Equal questions get equal answers; all of it may be asked often.</summary>
public interface IWorkbench
{
    ImmutableArray<ShelfQuilt> Quilts { get; }

    ImmutableArray<Fabric> Fabrics { get; }

    /// <summary>The checked plan of a quilt, kept or only tried, in a colorway or none.</summary>
    Planned Plan(Quilt quilt, string? colorway);
}

/// <summary>A quilt of the shop.</summary>
/// <param name="Slug">Its name in addresses: lower case letters, digits and hyphens.</param>
public sealed record ShelfQuilt(string Slug, Quilt Quilt);

/// <summary>A plan with what was found about it; the plan is absent where a fault leaves none.</summary>
public sealed record Planned(QuiltPlan? Plan, ImmutableArray<Finding> Findings, Trace Trace);
