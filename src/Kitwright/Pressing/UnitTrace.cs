using System.Collections.Immutable;

namespace Kitwright.Pressing;

/// <summary>The seams of one unit type.</summary>
/// <param name="Seams">Those that its own step presses, where they lie in the first copy.</param>
/// <param name="Sides">For each press, by seam, what lies on either side.</param>
/// <param name="Crossings">Where seams meet across a seam of this step.</param>
/// <param name="Ties">Seams of the other copies that must be pressed as those of the first.</param>
/// <param name="SewnInches">The length of each seam sewn in one run, in order.</param>
public sealed record UnitTrace(
    ImmutableArray<TracedSeam> Seams,
    ImmutableDictionary<SeamId, SeamSides> Sides,
    ImmutableArray<Crossing> Crossings,
    ImmutableArray<SeamTie> Ties,
    ImmutableArray<double> SewnInches
)
{
    /// <summary>Slanting seams that end on a seam of this step: the points of the design that it must keep.</summary>
    public int Points { get; init; }

    internal TracedCloth? Part { get; init; }
}

/// <summary>What lies on either side of a seam.</summary>
public sealed record SeamSides(SeamSide Bottom, SeamSide Top);
