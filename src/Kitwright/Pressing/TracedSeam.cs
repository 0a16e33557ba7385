using Kitwright.Plans;

namespace Kitwright.Pressing;

/// <summary>One seam of a unit type, by the act that presses it: all copies of the unit are pressed alike.</summary>
/// <param name="Verb">Index of the press among the recipe's verbs.</param>
public readonly record struct SeamId(PathId Recipe, int Verb);

/// <summary>Where a seam lies in a unit, and which side of it the cloth lies on that was on top when it was sewn.</summary>
/// <param name="TowardTop">A step of one inch to that side.</param>
public sealed record TracedSeam(SeamId Seam, Spot From, Spot To, Spot TowardTop)
{
    public Spot Middle => (From + To) * 0.5;

    public double Length => (To - From).Length;

    internal TracedSeam Moved(Pose by) => new(Seam, by.Apply(From), by.Apply(To), by.Turned(TowardTop));

    /// <summary>The part to the left of a line, or with −1 to its right; null where nothing of it is there.</summary>
    internal TracedSeam? Clip(SpotLine line, int side)
    {
        double from = side * line.Beside(From),
            to = side * line.Beside(To);
        if (from > -Spot.Near && to > -Spot.Near)
        {
            return from < Spot.Near && to < Spot.Near ? null : this;
        }

        if (from < Spot.Near && to < Spot.Near)
        {
            return null;
        }

        var crossing = From + ((To - From) * (from / (from - to)));
        return from < 0 ? this with { From = crossing } : this with { To = crossing };
    }
}

/// <summary>Two seams that meet across a third at one place.</summary>
/// <param name="Across">The seam that is sewn last and that both end on.</param>
/// <param name="Alike">
/// Whether the two allowances lie on opposite sides, and so nest, where both seams are pressed toward their top layers
/// or both toward their bottom layers; false where one of each kind nests.
/// </param>
public sealed record Crossing(SeamId Across, Spot At, SeamId One, SeamId Other, bool Alike);

/// <summary>Seams in different copies of one unit that lie at the same place: they are pressed the same way.</summary>
public sealed record SeamTie(SeamId One, SeamId Other, bool Alike);

/// <summary>What lies on one side of a seam when it is pressed.</summary>
/// <param name="Patches">Pieces of cloth in that part.</param>
/// <param name="Blocks">Whether whole blocks are among them.</param>
/// <param name="Lightness">Mean CIELAB lightness by area, 0 to 100.</param>
/// <param name="Ends">Seams of that part that end on this one, and lie folded under it.</param>
public sealed record SeamSide(int Patches, bool Blocks, double Lightness, int Ends);
