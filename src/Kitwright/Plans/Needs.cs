using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>
/// What a quilt takes, by letter: all that kits are made from. It comes from a plan, or is typed in by hand where the
/// pattern is somebody else's and no cut list may exist.
/// </summary>
public sealed record Needs(ImmutableArray<Need> Lengths, BattingNeed? Batting);

/// <summary>What a length is for.</summary>
public enum NeedKind
{
    Top,
    Binding,
    Backing,
}

/// <summary>One length of one fabric.</summary>
/// <param name="Letter">The fabric's letter.</param>
/// <param name="Roles">The roles it serves.</param>
/// <param name="Fabric">Stock number, or null without a colorway.</param>
/// <param name="Length">The saleable length, margin included: what the bag holds and what the page prints.</param>
public sealed record Need(string Letter, NeedKind Kind, ImmutableArray<string> Roles, string? Fabric, Length Length);

/// <summary>The least batting, in inches.</summary>
public sealed record BattingNeed(Length Width, Length Height)
{
    /// <summary>The smallest of the usual packages that holds it, either way round; null where none does.</summary>
    public PackagedBatting? Package { get; init; }
}

/// <summary>Batting as it is sold in packages; makers differ by an inch or three.</summary>
/// <param name="Name">Key of its name: <c>twin</c>.</param>
public sealed record PackagedBatting(string Name, Length Width, Length Height);
