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

    /// <summary>Seams of parts that are set into an angle, in the order of sewing; not among <see cref="Seams"/>.</summary>
    public ImmutableArray<SetInSeam> SetIn { get; init; } = [];

    /// <summary>The halves of seams that are swirled: each by the seam that ends at its corner, and pressed as that is.</summary>
    public ImmutableArray<TracedSeam> Swirled { get; init; } = [];

    internal TracedCloth? Part { get; init; }
}

/// <summary>What lies on either side of a seam.</summary>
public sealed record SeamSides(SeamSide Bottom, SeamSide Top);

/// <summary>One line of a seam that sets a part into an angle.</summary>
/// <param name="Verb">Index of the set-in among the recipe's verbs.</param>
/// <param name="Side">Which side of the angle, from 0, in the order of sewing.</param>
/// <param name="TowardPart">A step of one inch to the side on which the part lies that is set in.</param>
public sealed record SetInSeam(int Verb, int Side, Spot From, Spot To, Spot TowardPart);
