using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Accuracy;

/// <summary>Statistics as people say them: in sixty-fourths of an inch and in hundredths. Nothing is ever cut to one.</summary>
public static class Estimate
{
    private const int Parts = 64;

    public static Length Nearest(double inches) => Length.Inches(new Rational((long)Math.Round(inches * Parts), Parts));

    /// <summary>"1/32 in too small", "exact to 1/64 in".</summary>
    public static Message Off(double inches)
    {
        var nearest = Nearest(inches);
        return Message.Of(
            "accuracy.off",
            ("way", nearest.Sign < 0 ? "small" : nearest.Sign > 0 ? "large" : "none"),
            ("by", nearest.Sign < 0 ? -nearest : nearest)
        );
    }

    public static Message Share(double share) => Message.Of("accuracy.share", ("percent", (int)Math.Round(share * 100)));
}
