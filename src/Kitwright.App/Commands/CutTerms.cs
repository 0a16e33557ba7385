using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;

namespace Kitwright.App.Commands;

/// <summary>What a list is cut from, and how.</summary>
/// <param name="Measure">How the list writes its measures.</param>
/// <param name="MayTurn">Where a line does not say.</param>
/// <param name="Width">Of a cloth of open length; null for pieces of cloth.</param>
/// <param name="ClothPath">The list of pieces of cloth; null for a roll.</param>
/// <param name="Trim">Taken from the length of each strip of a roll, from width and height of each piece of cloth.</param>
/// <param name="Increments">Empty where the length is not rounded.</param>
/// <param name="Keep">Leftovers so long each way are listed; null for none.</param>
/// <param name="Goal"><c>length</c>, <c>purchase</c>, <c>cost</c>, <c>sheets</c>, or null.</param>
internal sealed record CutTerms(
    ListMeasure Measure,
    bool MayTurn,
    Length? Width,
    string? ClothPath,
    Length Trim,
    Length Straightening,
    ImmutableArray<Length> Increments,
    int Stages,
    FirstCut First,
    LastCut Last,
    ImmutableArray<int> Folds,
    string? Goal,
    WorkBudget Budget,
    int Seed,
    Length? Keep
)
{
    /// <summary>Repeats of the print, to which the pieces that ask for it are matched; null for none.</summary>
    public Length? RepeatAlong { get; init; }

    public Length? RepeatAcross { get; init; }

    /// <summary>Whether all pieces are matched, whatever the list says.</summary>
    public bool MatchAll { get; init; }

    /// <summary>Length of a printed panel; null where the cloth is not printed so.</summary>
    public Length? Panel { get; init; }

    /// <summary>What the engine for quilts does as well: two stages with trimming, in one layer.</summary>
    public bool IsPlainRoll => Width is not null && Stages == 2 && Last == LastCut.NonExact && Folds is [1];

    public Length Purchase(Length need) => Increments.Select(step => need.RoundUpTo(step)).Min();
}
