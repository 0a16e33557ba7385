using System.Collections.Immutable;

namespace Kitwright.App.Commands;

/// <summary>What <c>cut --json</c> writes.</summary>
/// <param name="Cut">Null where nothing could be planned.</param>
internal sealed record CutAnswer(string Format, int Version, CutOutcome? Cut, ImmutableArray<FindingJson> Findings)
{
    public static CutAnswer Of(CutOutcome? cut, ImmutableArray<FindingJson> findings) => new("kitwright-cut", 1, cut, findings);
}

/// <summary>A cutting plan for a list of pieces.</summary>
/// <param name="Status">
/// <c>proved</c>: the bound meets the length and can be recomputed; <c>provedBySearch</c>: by the word of an exhausted
/// search; <c>within</c>: neither.
/// </param>
/// <param name="Length">What the cutting takes, straightening included.</param>
/// <param name="Bound">No way of cutting takes less, straightening included.</param>
/// <param name="Purchase">The least saleable length that holds it; null without an increment.</param>
/// <param name="Seconds">By the clock.</param>
/// <param name="Work">Steps, equal on every run with equal limits of work.</param>
/// <param name="StoppedBy"><c>done</c>, <c>work-limit</c>, <c>clock</c> or <c>cancel</c>.</param>
/// <param name="Cloths">The cut tree, one entry for each way of cutting a cloth.</param>
internal sealed record CutOutcome(
    string Status,
    Measured Length,
    Measured Bound,
    Measured? Purchase,
    double Seconds,
    string Method,
    long Work,
    string StoppedBy,
    ImmutableArray<ClothCut> Cloths
);

/// <summary>Equal cloths cut alike.</summary>
/// <param name="Width">Across.</param>
/// <param name="Length">Down: of a roll, what the plan takes.</param>
internal sealed record ClothCut(Measured Width, Measured Length, int Times, ImmutableArray<StripOutcome> Strips);

/// <summary>Equal strips: the first cuts.</summary>
internal sealed record StripOutcome(Measured Height, int Times, ImmutableArray<SubCutOutcome> SubCuts);

/// <summary>Equal cuts across a strip.</summary>
/// <param name="Label">Of the piece in it.</param>
/// <param name="Width">Of the piece, along the strip.</param>
/// <param name="Height">Of the piece, across the strip.</param>
/// <param name="Times">How many in each strip.</param>
/// <param name="Turned">Width and height of the list exchanged.</param>
/// <param name="Trims">Further cuts that one of them takes to bring its piece to size.</param>
internal sealed record SubCutOutcome(string Label, Measured Width, Measured Height, int Times, bool Turned, int Trims);
