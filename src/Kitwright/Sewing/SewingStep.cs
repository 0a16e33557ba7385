using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Sewing;

/// <summary>One numbered step of the directions: how one recipe is carried out, in words.</summary>
/// <param name="Id"><c>step/3</c>.</param>
/// <param name="Recipe">The recipe that it carries out.</param>
/// <param name="Title">What is made: "Flying goose, Fabric B on A. Make 240".</param>
/// <param name="Lines">What to do, in order.</param>
/// <param name="UsesCutter">Whether the cautions for a rotary cutter belong beside it.</param>
public sealed record SewingStep(
    PathId Id,
    int Number,
    PathId Recipe,
    Message Title,
    ImmutableArray<Message> Lines,
    bool UsesCutter
);
