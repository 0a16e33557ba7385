using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>Which way to press each seam, as a problem without geometry.</summary>
/// <param name="Seams">One unknown a seam of a unit type.</param>
/// <param name="Ties">Pairs that must agree, and are never both broken open: copies of one unit look alike.</param>
/// <param name="Crossings">Pairs that nest where they agree in the stated way.</param>
/// <param name="Wishes">Pairs that had better agree: two ways of pressing one unit that could be one.</param>
public sealed record PressingProblem(
    ImmutableArray<SeamUnknown> Seams,
    ImmutableArray<SeamPair> Ties,
    ImmutableArray<SeamPair> Crossings,
    ImmutableArray<SeamPair> Wishes
)
{
    /// <summary>Crossings, counted with their weights, that do not nest.</summary>
    public long Unnested(ImmutableArray<PressToward> choices) => Crossings.Where(c => !c.Nests(choices)).Sum(c => c.Weight);

    /// <summary>Whether ties hold, and no two seams that meet lie on the same side.</summary>
    public bool Allows(ImmutableArray<PressToward> choices) =>
        choices.Length == Seams.Length
        && Ties.All(t => t.Nests(choices) || (choices[t.One] == PressToward.Open && choices[t.Other] == PressToward.Open))
        && Crossings.All(c => c.Nests(choices) || choices[c.One] == PressToward.Open || choices[c.Other] == PressToward.Open);

    /// <summary>The sum of what the seams would rather.</summary>
    public long Liked(ImmutableArray<PressToward> choices) =>
        Seams.Select((seam, i) => choices[i] switch
        {
            PressToward.Top => seam.TowardTop,
            PressToward.Bottom => -seam.TowardTop,
            _ => 0,
        }).Sum();
}

/// <summary>One seam.</summary>
/// <param name="TowardTop">How much it would rather be pressed toward its top layer; negative for the bottom.</param>
public readonly record struct SeamUnknown(SeamId Seam, int TowardTop);

/// <summary>Two seams by index, and whether they agree where both go toward the like layer.</summary>
/// <param name="Weight">How many places in the quilt.</param>
public readonly record struct SeamPair(int One, int Other, bool Alike, int Weight)
{
    public bool Nests(ImmutableArray<PressToward> choices) =>
        choices[One] != PressToward.Open && choices[Other] != PressToward.Open && choices[One] == choices[Other] == Alike;
}

/// <summary>An answer to a pressing problem.</summary>
/// <param name="Unnested">Weight of the crossings that do not nest.</param>
/// <param name="AtLeast">No answer leaves fewer.</param>
public sealed record PressingAnswer(ImmutableArray<PressToward> Choices, long Unnested, long AtLeast)
{
    public bool Proved => Unnested == AtLeast;
}

/// <summary>Answers a problem in which not all crossings can nest.</summary>
public delegate PressingAnswer OpenSeams(PressingProblem problem);
