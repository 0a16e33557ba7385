using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>What is to be cut from one length of one fabric, before anything is decided.</summary>
/// <param name="Id"><c>cloth/A</c>.</param>
/// <param name="SpareStrips">
/// Kit margin: how many strips the kit holds beyond the plan, each high enough that any one of the pieces can be cut
/// again from it, the better way round.
/// </param>
/// <param name="Goal">What is made least first.</param>
public sealed record ClothProblem(
    PathId Id,
    string Letter,
    ImmutableArray<string> Roles,
    string? Fabric,
    ClothTerms Terms,
    ImmutableArray<ClothDemand> Demand,
    int SpareStrips,
    CutGoal Goal
)
{
    /// <summary>What counts first, and what then.</summary>
    public ImmutableArray<CutAim> Order { get; init; } = CutOrder.Usual;
}

/// <summary>Least first: what the shop buys, or every inch.</summary>
public enum CutGoal
{
    /// <summary>The saleable length; the slack inside one step is spent on easier cutting. For one quilt.</summary>
    ByTheStep,

    /// <summary>The exact length. For a shop that cuts many kits.</summary>
    ByTheInch,
}
