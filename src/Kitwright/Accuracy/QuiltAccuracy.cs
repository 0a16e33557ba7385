using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Accuracy;

/// <summary>How well a quilt will come out in one person's hands, and what would help.</summary>
/// <param name="TrueSeam">The same hands with a true quarter inch, untrimmed.</param>
/// <param name="ClosedTop">The top's width, untrimmed, in the closed form.</param>
/// <param name="Points">Slanting seams that end at a seam, over the whole quilt.</param>
/// <param name="PointsCutOff">Share of points that a seam cuts off by more than 1/32 in.</param>
/// <param name="Helps">What would help, the most helpful first.</param>
public sealed record QuiltAccuracy(
    Hands Hands,
    Sewn Untrimmed,
    Sewn Trimmed,
    Sewn TrueSeam,
    LinearError ClosedTop,
    long Points,
    double PointsCutOff,
    ImmutableArray<Help> Helps
)
{
    /// <summary>Inches: half a sixteenth of a point lost shows.</summary>
    public const double PointLost = 1.0 / 32;

    private const int UsualQuilts = 10_000;
    private const int QuiltsForHelp = 1_000;

    /// <param name="generous">How much larger than they need be units are cut that are trimmed, in inches.</param>
    public static QuiltAccuracy Of(QuiltPlan plan, Hands hands, double generous, int quilts = UsualQuilts, ulong seed = 1)
    {
        var shape = QuiltShape.Of(plan);
        var closed = ClosedForm.Of(shape, hands);
        var untrimmed = new Simulation(shape, hands, generous, trimmed: false).Run(quilts, seed);
        // All changes are tried on the same dice, so that only the change tells.
        double Share(Hands changed, bool trim = false) => new Simulation(shape, changed, generous, trim).Run(QuiltsForHelp, seed) is var s ? s.OverSixteenth : 0;
        var now = Share(hands);
        return new(
            hands,
            untrimmed,
            new Simulation(shape, hands, generous, trimmed: true).Run(quilts, seed),
            new Simulation(shape, hands.WithTrueSeam(), generous, trimmed: false).Run(QuiltsForHelp, seed),
            closed[^1].Across,
            shape.Units.Sum(u => (long)u.Copies * u.Points),
            CutOff(hands),
            [
                .. new Help[]
                {
                    new(HelpKind.ScantSeam, now, Share(hands.WithScantSeam())),
                    new(HelpKind.SteadySeam, now, Share(hands with { SeamSpread = hands.SeamSpread / 2 })),
                    new(HelpKind.SteadyCut, now, Share(hands with { CutSpread = hands.CutSpread / 2 })),
                    new(HelpKind.TrueCut, now, Share(hands with { CutBias = 0 })),
                    new(HelpKind.FlatFold, now, Share(hands with { FoldSpread = hands.FoldSpread / 2 })),
                    new(HelpKind.Trimming, now, Share(hands, trim: true)),
                }
                    .Where(help => help.After < help.Before)
                    .OrderBy(help => help.After),
            ]
        );
    }

    /// <summary>The simulation alone: untrimmed work.</summary>
    public static Sewn Sew(QuiltPlan plan, Hands hands, int quilts = UsualQuilts, ulong seed = 1) =>
        new Simulation(QuiltShape.Of(plan), hands, 0, trimmed: false).Run(quilts, seed);

    /// <summary>
    /// A point lies a seam allowance from the raw edge, give or take a cut and a seam; the seam that passes it must not
    /// be wider than that by more than <see cref="PointLost"/>.
    /// </summary>
    private static double CutOff(Hands hands)
    {
        var deviation = Math.Sqrt((2 * hands.SeamSpread * hands.SeamSpread) + hands.CutVariance);
        return deviation > 0 ? Normal.Above((PointLost - hands.SeamBias) / deviation) : hands.SeamBias > PointLost ? 1 : 0;
    }
}

/// <summary>One thing to do better.</summary>
/// <param name="Before">Share of blocks off by more than 1/16 in as it is.</param>
/// <param name="After">The same with this alone done better.</param>
public sealed record Help(HelpKind Kind, double Before, double After);

/// <summary>What can be done better.</summary>
public enum HelpKind
{
    /// <summary>A seam that gives back what the fold takes.</summary>
    ScantSeam,

    /// <summary>Seams half as uneven.</summary>
    SteadySeam,

    /// <summary>Cuts half as uneven.</summary>
    SteadyCut,

    /// <summary>Pieces of the size on the label, in the mean.</summary>
    TrueCut,

    /// <summary>Seams pressed alike.</summary>
    FlatFold,

    /// <summary>Cutting generous and squaring up.</summary>
    Trimming,
}
