using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Kitwright.App.Commands;

/// <summary>What <c>cut --json</c> writes.</summary>
/// <param name="Cut">Null where nothing could be planned.</param>
internal sealed record CutAnswer(string Format, int Version, CutOutcome? Cut, ImmutableArray<FindingJson> Findings)
{
    /// <summary>What comes from the leftovers on the shelf; null where they were not asked for.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ShelfOutcome? Shelf { get; init; }

    public static CutAnswer Of(CutOutcome? cut, ImmutableArray<FindingJson> findings) => new("kitwright-cut", 1, cut, findings);
}

/// <summary>A cutting plan for a list of pieces.</summary>
/// <param name="Status">
/// <c>proved</c>: the bound meets what is reached, and can be recomputed; <c>provedBySearch</c>: by the word of an
/// exhausted search; <c>within</c>: neither.
/// </param>
/// <param name="Length">Of a roll: what the cutting takes, straightening included.</param>
/// <param name="Bound">Of a roll: no way of cutting takes less, straightening included.</param>
/// <param name="Purchase">The least saleable length that holds it; null without an increment.</param>
/// <param name="Cost">Of pieces of cloth: of those that are touched.</param>
/// <param name="CostBound">No way of cutting costs less; null for the goal of fewest sheets, and where pieces are short.</param>
/// <param name="Sheets">Pieces of cloth that are touched.</param>
/// <param name="SheetsBound">For the goal of fewest sheets: no way touches fewer; null where pieces are short.</param>
/// <param name="Seconds">By the clock.</param>
/// <param name="Work">Steps, equal on every run with equal limits of work.</param>
/// <param name="StoppedBy"><c>done</c>, <c>work-limit</c>, <c>clock</c> or <c>cancel</c>.</param>
/// <param name="Short">Pieces that are not cut.</param>
/// <param name="ShortIsProved">Whether it is proved that the cloths cannot hold all pieces.</param>
/// <param name="Cloths">The cut tree, one entry for each way of cutting a cloth.</param>
internal sealed record CutOutcome(
    string Status,
    Measured? Length,
    Measured? Bound,
    Measured? Purchase,
    string? Cost,
    string? CostBound,
    int Sheets,
    int? SheetsBound,
    double Seconds,
    string Method,
    long Work,
    string StoppedBy,
    ImmutableArray<ShortOutcome> Short,
    bool ShortIsProved,
    ImmutableArray<ClothCut> Cloths
);

/// <summary>So many of a piece are missing.</summary>
internal sealed record ShortOutcome(string Label, int Count);

/// <summary>Equal cloths cut alike.</summary>
/// <param name="Cloth">The cloth's label; null for a roll.</param>
/// <param name="FirstCut"><c>across</c> the width, or <c>along</c> the length.</param>
/// <param name="Width">Across.</param>
/// <param name="Length">Down: of a roll, what the plan takes.</param>
/// <param name="Leftovers">Worth keeping, of all these cloths; none where it was not asked for.</param>
internal sealed record ClothCut(
    string? Cloth,
    string FirstCut,
    Measured Width,
    Measured Length,
    int Times,
    ImmutableArray<StripOutcome> Strips,
    ImmutableArray<LeftoverOutcome> Leftovers
);

/// <summary>Equal rectangles that are left: across and down the cloth.</summary>
internal sealed record LeftoverOutcome(Measured Width, Measured Length, int Count);

/// <summary>Equal strips: the first cuts.</summary>
/// <param name="Height">At right angles to the first cut.</param>
/// <param name="Layers">In how many layers the strip is cut.</param>
/// <param name="SubCuts">Of one layer.</param>
internal sealed record StripOutcome(Measured Height, int Layers, int Times, ImmutableArray<SubCutOutcome> SubCuts);

/// <summary>Equal cuts across a strip.</summary>
/// <param name="Label">Of the piece in it, or of the lowest.</param>
/// <param name="Width">Of the piece, along the strip.</param>
/// <param name="Height">Of the piece, across the strip.</param>
/// <param name="Stacked">How many of it lie above one another.</param>
/// <param name="Times">How many such cuts in each strip.</param>
/// <param name="Turned">Width and height of the list exchanged.</param>
/// <param name="CutWidth">Of the sub-cut: that of its widest piece.</param>
/// <param name="Trims">Further cuts that one of them takes to bring its pieces to size.</param>
/// <param name="Above">What lies above, from the lowest on.</param>
internal sealed record SubCutOutcome(
    string Label,
    Measured Width,
    Measured Height,
    int Stacked,
    int Times,
    bool Turned,
    Measured CutWidth,
    int Trims,
    ImmutableArray<StackedOutcome> Above
);

/// <summary>Equal pieces in a stack.</summary>
internal sealed record StackedOutcome(string Label, Measured Width, Measured Height, int Stacked, bool Turned);
