using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Accuracy;

/// <summary>Statistics as people say them: in sixty-fourths of an inch or half millimeters, and in hundredths. Nothing is ever cut to one.</summary>
public static class Estimate
{
    private const int Parts = 64;

    private const double MillimetersPerInch = 25.4;

    public static Length Nearest(double inches, LengthUnit units = LengthUnit.Inch) =>
        units == LengthUnit.Centimeter
            ? Length.Millimeters(new Rational((long)Math.Round(inches * MillimetersPerInch * 2), 2))
            : Length.Inches(new Rational((long)Math.Round(inches * Parts), Parts));

    /// <summary>"1/32 in too small", "exact to 1/64 in".</summary>
    public static Message Off(double inches, LengthUnit units = LengthUnit.Inch)
    {
        var nearest = Nearest(inches, units);
        return Message.Of(
            "accuracy.off",
            ("way", nearest.Sign < 0 ? "small" : nearest.Sign > 0 ? "large" : "none"),
            ("by", nearest.Sign < 0 ? -nearest : nearest)
        );
    }

    public static Message Share(double share) => Message.Of("accuracy.share", ("percent", (int)Math.Round(share * 100)));
}
