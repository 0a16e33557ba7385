using Kitwright.Geometry;

namespace Kitwright.Checking.Exact;

/// <summary>
/// A double beside a bound on what it was computed from: a filter that answers the sign of a coordinate expression
/// where it is clear, and nothing where only exact arithmetic can tell. It never decides a measure.
/// </summary>
/// <param name="Magnitude">The same expression over absolute values; rounding errors are small parts of it.</param>
internal readonly record struct Near(double Value, double Magnitude)
{
    // Expressions here have fewer than 40 roundings, each at most 2^-53 of the magnitude; 1e-13 is 900 of them.
    private const double Relative = 1e-13;

    // Keeps clear of the range where doubles lose relative precision.
    private const double Absolute = 1e-250;

    public static Near Of(Surd x)
    {
        double a = x.One.ToDouble();
        if (x.IsRational)
        {
            return new(a, Math.Abs(a));
        }

        double b = x.Root2.ToDouble() * Math.Sqrt(2),
            c = x.Root3.ToDouble() * Math.Sqrt(3),
            d = x.Root6.ToDouble() * Math.Sqrt(6);
        return new(a + b + c + d, Math.Abs(a) + Math.Abs(b) + Math.Abs(c) + Math.Abs(d));
    }

    private double Error => (Magnitude * Relative) + Absolute;

    public double Low => Value - Error;
    public double High => Value + Error;

    /// <summary>−1 or 1 where that is certain, else null; a zero is never certain.</summary>
    public int? Sign => Math.Abs(Value) > Error ? Math.Sign(Value) : null;

    public static Near operator +(Near x, Near y) => new(x.Value + y.Value, x.Magnitude + y.Magnitude);

    public static Near operator -(Near x, Near y) => new(x.Value - y.Value, x.Magnitude + y.Magnitude);

    public static Near operator *(Near x, Near y) => new(x.Value * y.Value, x.Magnitude * y.Magnitude);
}
