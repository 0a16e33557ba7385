using System.Numerics;

namespace Kitwright.Measure;

/// <summary>An exact length, held as a rational number of inches.</summary>
/// <remarks>
/// One inch is 25.4 mm exactly, so inches and millimeters convert both ways without loss. Lengths may be negative
/// (an offset). Equality and order are those of the numbers; <c>default</c> is zero. There is no conversion from
/// double: a measure is never the outcome of floating point.
/// </remarks>
public readonly record struct Length(Rational InInches)
    : IComparable<Length>,
        IComparisonOperators<Length, Length, bool>
{
    /// <summary>Stored lengths are whole ticks of 1/8128 in = 1/320 mm: 1/64 in is 127 of them, 1 mm is 320.</summary>
    public const int TicksPerInch = 8128;

    private static readonly Rational MillimetersPerInch = new(127, 5);

    public static Length Zero => default;
    public static Length Inch => new(1);
    public static Length Yard => new(36);

    public static Length Inches(Rational inches) => new(inches);

    /// <summary>A mixed fraction: <c>Inches(3, 7, 8)</c> is 3 7/8 in.</summary>
    public static Length Inches(int whole, int numerator, int denominator) =>
        new(whole + new Rational(numerator, denominator));

    public static Length Yards(Rational yards) => new(yards * 36);

    public static Length Millimeters(Rational millimeters) => new(millimeters / MillimetersPerInch);

    public static Length Ticks(long ticks) => new(new Rational(ticks, TicksPerInch));

    public Rational InMillimeters => InInches * MillimetersPerInch;
    public Rational InYards => InInches / 36;
    public int Sign => InInches.Sign;
    public bool IsZero => InInches.IsZero;

    /// <summary>Whole ticks, where the length is on the stored grid; otherwise false.</summary>
    public bool TryTicks(out long ticks)
    {
        var exact = InInches * TicksPerInch;
        ticks = 0;
        if (!exact.IsInteger || exact.Numerator < long.MinValue || exact.Numerator > long.MaxValue)
        {
            return false;
        }

        ticks = (long)exact.Numerator;
        return true;
    }

    public static Length operator +(Length x, Length y) => new(x.InInches + y.InInches);

    public static Length operator -(Length x, Length y) => new(x.InInches - y.InInches);

    public static Length operator -(Length x) => new(-x.InInches);

    public static Length operator *(Length x, Rational factor) => new(x.InInches * factor);

    public static Length operator *(Rational factor, Length x) => x * factor;

    public static Length operator /(Length x, Rational divisor) => new(x.InInches / divisor);

    /// <summary>How many times <paramref name="y"/> goes into <paramref name="x"/>, exactly.</summary>
    public static Rational operator /(Length x, Length y) => x.InInches / y.InInches;

    public static bool operator <(Length x, Length y) => x.InInches < y.InInches;

    public static bool operator >(Length x, Length y) => x.InInches > y.InInches;

    public static bool operator <=(Length x, Length y) => x.InInches <= y.InInches;

    public static bool operator >=(Length x, Length y) => x.InInches >= y.InInches;

    public static Length Min(Length x, Length y) => x <= y ? x : y;

    public static Length Max(Length x, Length y) => x >= y ? x : y;

    /// <summary>The least multiple of <paramref name="step"/> that is not below this length.</summary>
    public Length RoundUpTo(Length step) => step * (this / step).Ceiling();

    /// <summary>The greatest multiple of <paramref name="step"/> that is not above this length.</summary>
    public Length RoundDownTo(Length step) => step * (this / step).Floor();

    public int CompareTo(Length other) => InInches.CompareTo(other.InInches);

    /// <summary>The mixed fraction with its unit, for logs: "3 7/8 in".</summary>
    public override string ToString() => LengthText.Inches(this) + " in";
}
