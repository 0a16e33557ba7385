using System.Collections.Immutable;

namespace Kitwright.Accuracy;

/// <summary>How far off one measure of a unit is: what biases add up to, and the variance of what is new each time.</summary>
/// <param name="Cuts">How often the cutting bias goes in.</param>
/// <param name="Seams">How often the take of a seam goes out.</param>
/// <param name="Variance">Of the independent spreads, in square inches.</param>
public readonly record struct LinearError(double Cuts, double Seams, double Variance)
{
    public double Mean(Hands hands) => (Cuts * hands.CutBias) - (Seams * hands.Take);

    public double Deviation => Math.Sqrt(Variance);
}

/// <summary>
/// The closed form for work that is not trimmed: sizes are sums and means of independent errors, so their means add up
/// and so do their variances, with the squares of their factors (the variance of a sum; any textbook of statistics).
/// </summary>
public static class ClosedForm
{
    /// <summary>A row of n equal pieces, n − 1 seams: n cuts less n − 1 takes.</summary>
    public static LinearError Row(int pieces, Hands hands) =>
        new(pieces, pieces - 1, (pieces * hands.CutVariance) + ((pieces - 1) * hands.TakeVariance));

    /// <summary>Across and up, for each unit of a plan in order.</summary>
    internal static ImmutableArray<(LinearError Across, LinearError Up)> Of(QuiltShape quilt, Hands hands)
    {
        var found = new List<(LinearError Across, LinearError Up)>();
        foreach (var unit in quilt.Units)
        {
            found.Add(unit.Parts.IsEmpty ? (Technique(unit.ShrinkAcross, hands), Technique(unit.ShrinkUp, hands)) : Joined(unit, found, hands));
        }

        return [.. found];
    }

    private static LinearError Technique(double shrink, Hands hands) =>
        new(1, shrink / 2, hands.CutVariance + (shrink * shrink / 4 * hands.TakeVariance));

    private static (LinearError, LinearError) Joined(UnitShape unit, List<(LinearError Across, LinearError Up)> found, Hands hands)
    {
        var seams = unit.Parts.Length - 1;
        LinearError along = new(0, seams, seams * hands.TakeVariance),
            across = default;
        var edges = unit.Parts.Count(p => !p.Fitted);
        foreach (var part in unit.Parts)
        {
            var (a, x) = ErrorsOf(part, found, hands);
            along = new(along.Cuts + a.Cuts, along.Seams + a.Seams, along.Variance + a.Variance);
            if (!part.Fitted)
            {
                across = new(across.Cuts + (x.Cuts / edges), across.Seams + (x.Seams / edges), across.Variance + (x.Variance / (edges * edges)));
            }
        }

        return unit.Along ? (along, across) : (across, along);
    }

    private static (LinearError Along, LinearError Across) ErrorsOf(PartShape part, List<(LinearError Across, LinearError Up)> found, Hands hands)
    {
        if (part.Unit < 0)
        {
            var piece = new LinearError(1, 0, hands.CutVariance);
            return (piece, piece);
        }

        var (across, up) = found[part.Unit];
        return part.Turned ? (up, across) : (across, up);
    }
}
