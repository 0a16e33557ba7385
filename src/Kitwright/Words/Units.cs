using Kitwright.Measure;

namespace Kitwright.Words;

/// <summary>The units in which lengths are said.</summary>
/// <param name="Sizes">Of what is cut and sewn: inch or centimeter.</param>
/// <param name="Cloth">Of what is bought: yard or meter.</param>
public sealed record Units(LengthUnit Sizes, LengthUnit Cloth)
{
    /// <summary>Those in which templates are written.</summary>
    public static Units OfTemplates { get; } = new(LengthUnit.Inch, LengthUnit.Yard);

    internal LengthUnit Of(string kind) => kind == "yards" ? Cloth : Sizes;

    internal static string Text(Length length, LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Inch => LengthText.Inches(length),
            LengthUnit.Yard => LengthText.Yards(length),
            LengthUnit.Centimeter => LengthText.Centimeters(Nearest(length, Length.Millimeters(new Rational(1, 10)))),
            LengthUnit.Meter => LengthText.Meters(Nearest(length, Length.Millimeters(10))),
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };

    /// <summary>
    /// Cut sizes and lengths sold in the metric system stand on this grid and are said as they are; what was measured in
    /// inches or yards is said as near as a ruler shows it, and not in long decimals.
    /// </summary>
    private static Length Nearest(Length length, Length grid) => grid * ((length / grid) + new Rational(1, 2)).Floor();

    /// <summary>What follows a length in a template, with the unit that was said in place of the template's own.</summary>
    internal static string After(string text, LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Centimeter => Renamed(text, " in", " cm"),
            LengthUnit.Meter => Renamed(text, " yd", " m"),
            _ => text,
        };

    private static string Renamed(string text, string from, string to) =>
        text.StartsWith(from, StringComparison.Ordinal) && (text.Length == from.Length || !char.IsLetter(text[from.Length]))
            ? to + text[from.Length..]
            : text;
}

/// <summary>Stands in a message for a length that something else shows: its unit follows it as it would follow the length.</summary>
public sealed record LengthMark(string Text);
