using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Words;

namespace Kitwright.Piecing;

/// <summary>A recipe before it is known how often it is run.</summary>
internal sealed record Draft(
    PathId Id,
    string Kind,
    ImmutableArray<Verb> Verbs,
    ImmutableArray<string> Makes,
    Surd FinishedWidth,
    Surd FinishedHeight,
    string? Shows,
    Message Name,
    UnitPicture Picture
);

/// <summary>What a technique answers: how one run goes, and which registers then hold a copy each.</summary>
internal sealed record Program(string Kind, ImmutableArray<Verb> Verbs, ImmutableArray<string> Makes, Message Name)
{
    public ImmutableArray<UnitPart> Parts { get; init; } = [];
}
