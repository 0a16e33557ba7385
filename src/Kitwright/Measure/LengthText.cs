using System.Globalization;
using System.Numerics;

namespace Kitwright.Measure;

/// <summary>
/// Writes and reads lengths as the trade does: mixed fractions of an inch or a yard, or metric. No unit is written
/// unless the name says so: a page says it once.
/// </summary>
public static class LengthText
{
    /// <summary>"3 7/8", "1/4", "12", "-1/2". Exact: a denominator that no ruler has is still printed.</summary>
    public static string Inches(Length length) => Mixed(length.InInches);

    /// <summary>"2 1/4", "5/8": a length in yards, exact.</summary>
    public static string Yards(Length length) => Mixed(length.InYards);

    /// <summary>Millimeters as a decimal where it ends within four places, else the exact fraction.</summary>
    public static string Millimeters(Length length) => Decimal(length.InMillimeters);

    /// <summary>Centimeters, written as millimeters are.</summary>
    public static string Centimeters(Length length) => Decimal(length.InMillimeters / 10);

    /// <summary>Meters, written as millimeters are.</summary>
    public static string Meters(Length length) => Decimal(length.InMillimeters / 1000);

    private static string Decimal(Rational number)
    {
        const int Places = 10_000;
        var parts = number * Places;
        return parts.IsInteger && BigInteger.Abs(parts.Numerator) < 1_000_000_000_000
            ? ((decimal)parts.Numerator / Places).ToString("0.####", CultureInfo.InvariantCulture)
            : Mixed(number);
    }

    public static string Mixed(Rational value)
    {
        if (value.IsInteger)
        {
            return value.ToString();
        }

        var magnitude = Rational.Abs(value);
        var whole = magnitude.Floor();
        var fraction = (magnitude - whole).ToString();
        var sign = value.Sign < 0 ? "-" : "";
        return whole.IsZero ? sign + fraction : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {fraction}");
    }

    /// <summary>
    /// Reads a length with an optional unit: in, inch, inches, ", yd, yard(s), ft, mm, cm, m. A bare number is in
    /// <paramref name="bareUnit"/>. Never throws.
    /// </summary>
    public static bool TryParse(string? text, out Length length, LengthUnit bareUnit = LengthUnit.Inch)
    {
        length = default;
        var trimmed = (text ?? "").Trim();
        var digits = trimmed.TrimEnd(UnitLetters).TrimEnd();
        var unitText = trimmed[digits.Length..].Trim().TrimEnd('.').ToLowerInvariant();
        if (!RationalText.TryParse(digits, out var number))
        {
            return false;
        }

        LengthUnit? unit = unitText switch
        {
            "" => bareUnit,
            "in" or "inch" or "inches" or "\"" or "″" or "”" => LengthUnit.Inch,
            "yd" or "yds" or "yard" or "yards" => LengthUnit.Yard,
            "ft" or "foot" or "feet" => LengthUnit.Foot,
            "mm" => LengthUnit.Millimeter,
            "cm" => LengthUnit.Centimeter,
            "m" or "meter" or "meters" or "metre" or "metres" => LengthUnit.Meter,
            _ => null,
        };
        if (unit is null)
        {
            return false;
        }

        length = Of(number, unit.Value);
        return true;
    }

    public static Length Of(Rational number, LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Inch => Length.Inches(number),
            LengthUnit.Foot => Length.Inches(number * 12),
            LengthUnit.Yard => Length.Yards(number),
            LengthUnit.Millimeter => Length.Millimeters(number),
            LengthUnit.Centimeter => Length.Millimeters(number * 10),
            LengthUnit.Meter => Length.Millimeters(number * 1000),
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };

    private static readonly char[] UnitLetters =
    [
        .. "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.\"″”",
    ];
}

/// <summary>The units in which a length may be written.</summary>
public enum LengthUnit
{
    Inch,
    Foot,
    Yard,
    Millimeter,
    Centimeter,
    Meter,
}
