using Kitwright.Findings;
using Kitwright.Measure;

namespace Kitwright.Accuracy;

/// <summary>By how much a person will have a block off: more than nothing, and no more than a seam allowance.</summary>
public static class Tolerance
{
    /// <summary>Nobody measures cloth more finely.</summary>
    private static readonly Length LeastInches = Length.Inches(0, 1, 64);
    private static readonly Length LeastMillimeters = Length.Millimeters(new Rational(1, 2));

    /// <param name="units">Of a text that names none.</param>
    /// <returns>The tolerance, or what is wrong with it.</returns>
    public static (Length? Value, Finding? Finding) Read(string? text, LengthUnit units, Length seam)
    {
        var least = units == LengthUnit.Centimeter ? LeastMillimeters : LeastInches;
        return LengthText.TryParse(text, out var tolerance, units) && tolerance >= least && tolerance <= seam
            ? (tolerance, null)
            : (null, Finding.Of("accuracy.tolerance-bad", "tolerance", ("text", text ?? ""), ("least", least), ("most", seam)));
    }
}
