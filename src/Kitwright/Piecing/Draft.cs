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
    UnitPicture Picture,
    Polygon? Outline
);

/// <summary>What a technique answers: how one run goes, and which registers then hold a copy each.</summary>
internal sealed record Program(string Kind, ImmutableArray<Verb> Verbs, ImmutableArray<string> Makes, Message Name)
{
    public ImmutableArray<UnitPart> Parts { get; init; } = [];

    /// <summary>Whether points of its cloth may stand out beyond its corners, so that what it is joined into is squared up.</summary>
    public bool IsRagged { get; init; }

    /// <summary>The finished outline where it is no rectangle.</summary>
    public Polygon? Outline { get; init; }

    /// <summary>The same for a region from which the one that was made is turned.</summary>
    public Program TurnedBack(Motion home) =>
        this with
        {
            Verbs = [.. Verbs, .. Makes.Select(register => new Turn(register, home))],
            Outline = Outline?.Moved(home),
        };
}
