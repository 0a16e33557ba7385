using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.Accuracy;

/// <summary>
/// The one-minute seam test: three strips of 1 1/2 in, sewn side by side, pressed and cooled, must measure 3 1/2 in, and
/// the middle one 1 in ([QCON], [SIB]). Who sews in centimeters takes strips of 4 cm, see <see cref="For"/>.
/// </summary>
/// <param name="Across">All three strips, measured.</param>
/// <param name="Middle">The middle strip from seam to seam, measured.</param>
public sealed record SeamTest(Length Across, Length Middle)
{
    /// <summary>How wide the strips are cut.</summary>
    public Length Strip { get; init; } = Length.Inches(1, 1, 2);

    /// <summary>The allowance that is aimed at.</summary>
    public Length Seam { get; init; } = Length.Inches(0, 1, 4);

    public Length AcrossWanted => (Strip * 3) - (Seam * 4);

    public Length MiddleWanted => Strip - (Seam * 2);

    /// <summary>
    /// The test for a quilt: strips of 1 1/2 in, or of 4 cm where it is planned in centimeters, as wide as that with a
    /// seam of its own (own arithmetic: 3 strips less 4 allowances).
    /// </summary>
    public static SeamTest For(LengthUnit units, Length seam, Length across, Length middle) =>
        new(across, middle) { Strip = units == LengthUnit.Centimeter ? Length.Millimeters(40) : Length.Inches(1, 1, 2), Seam = seam };

    /// <summary>What a person measured, as it was typed; a finding where it is no seam test.</summary>
    /// <param name="units">Of numbers without one.</param>
    public static Checked<SeamTest> Read(string? across, string? middle, LengthUnit units, Length seam)
    {
        var right = For(units, seam, Length.Zero, Length.Zero);
        return LengthText.TryParse(across, out var whole, units)
            && LengthText.TryParse(middle, out var center, units)
            && right with { Across = whole, Middle = center } is { IsPlausible: true } test
            ? Checked<SeamTest>.Of(test)
            : Checked<SeamTest>.Failed(
                Finding.Of(
                    "accuracy.test-bad",
                    "seam test",
                    ("across", across ?? "?"),
                    ("middle", middle ?? "?"),
                    ("strip", right.Strip),
                    ("acrossWanted", right.AcrossWanted),
                    ("middleWanted", right.MiddleWanted)
                )
            );
    }

    /// <summary>Half an inch either way is no seam allowance any more.</summary>
    public static Length MostOff { get; } = Length.Inches(0, 1, 2);

    /// <summary>Each of the two seams takes this beyond its allowances; negative where it takes less.</summary>
    /// <remarks>With strips as wide as they should be, the whole is short by two seams' worth.</remarks>
    public Length TakenBySeam => (AcrossWanted - Across) / 2;

    /// <summary>What the middle says more than the seams explain: the strips were cut wider by this.</summary>
    /// <remarks>across = 3·cut − 2·take and middle = cut − take, so cut = across − 2·middle (own arithmetic).</remarks>
    public Length CutWider => (Across - AcrossWanted) - ((Middle - MiddleWanted) * 2);

    /// <summary>What a seam takes too much once the cutting is told apart: cut − middle.</summary>
    public Length SeamTakes => CutWider - (Middle - MiddleWanted);

    /// <summary>How far the needle, or the fabric guide, is to move toward the raw edge; negative for away from it.</summary>
    public Length NeedleOffset => SeamTakes / 2;

    public bool IsPlausible =>
        Off(Across, AcrossWanted) <= MostOff && Off(Middle, MiddleWanted) <= MostOff;

    /// <summary>A person's hands as the test finds them: her own biases, the usual spreads.</summary>
    public Hands Hands(Hands usual) =>
        usual with
        {
            CutBias = CutWider.InInches.ToDouble(),
            SeamBias = (SeamTakes.InInches.ToDouble() - usual.Fold) / 2,
        };

    private static Length Off(Length measured, Length wanted) => measured > wanted ? measured - wanted : wanted - measured;
}
