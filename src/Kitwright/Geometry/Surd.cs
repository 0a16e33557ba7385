using System.Numerics;
using Kitwright.Measure;

namespace Kitwright.Geometry;

/// <summary>An exact coordinate a + b√2 + c√3 + d√6 with rational a…d.</summary>
/// <remarks>
/// The field holds every point of work at 45 and 60 degrees. It is closed under + − × ÷; the four parts are unique,
/// so equality is by parts. Order is exact: an interval filter in double answers most questions and integer squaring
/// the rest. <c>default</c> is zero.
/// </remarks>
public readonly record struct Surd(Rational One, Rational Root2, Rational Root3, Rational Root6)
    : IComparable<Surd>,
        IComparisonOperators<Surd, Surd, bool>
{
    private const double Sqrt2 = 1.4142135623730951;
    private const double Sqrt3 = 1.7320508075688772;
    private const double Sqrt6 = 2.4494897427831781;

    public Surd(Rational value)
        : this(value, default, default, default) { }

    public static Surd Zero => default;

    /// <summary>√2 times a rational.</summary>
    public static Surd OfRoot2(Rational factor) => new(default, factor, default, default);

    /// <summary>√3 times a rational.</summary>
    public static Surd OfRoot3(Rational factor) => new(default, default, factor, default);

    public bool IsRational => Root2.IsZero && IsInRoot2;
    private bool IsInRoot2 => Root3.IsZero && Root6.IsZero;
    public bool IsZero => One.IsZero && IsRational;

    public static implicit operator Surd(Rational value) => new(value);

    public static implicit operator Surd(int value) => new((Rational)value);

    public static implicit operator Surd(Length length) => new(length.InInches);

    public static Surd operator +(Surd x, Surd y) =>
        x.IsRational && y.IsRational ? new(x.One + y.One)
        : new(x.One + y.One, x.Root2 + y.Root2, x.Root3 + y.Root3, x.Root6 + y.Root6);

    public static Surd operator -(Surd x, Surd y) =>
        x.IsRational && y.IsRational ? new(x.One - y.One)
        : new(x.One - y.One, x.Root2 - y.Root2, x.Root3 - y.Root3, x.Root6 - y.Root6);

    public static Surd operator -(Surd x) => new(-x.One, -x.Root2, -x.Root3, -x.Root6);

    public static Surd operator *(Surd x, Surd y)
    {
        if (y.IsRational)
        {
            return x.Scaled(y.One);
        }

        if (x.IsRational)
        {
            return y.Scaled(x.One);
        }

        if (x.IsInRoot2 && y.IsInRoot2)
        {
            return new(
                (x.One * y.One) + (2 * x.Root2 * y.Root2),
                (x.One * y.Root2) + (x.Root2 * y.One),
                default,
                default
            );
        }

        return new(
            (x.One * y.One) + (2 * x.Root2 * y.Root2) + (3 * x.Root3 * y.Root3) + (6 * x.Root6 * y.Root6),
            (x.One * y.Root2) + (x.Root2 * y.One) + (3 * ((x.Root3 * y.Root6) + (x.Root6 * y.Root3))),
            (x.One * y.Root3) + (x.Root3 * y.One) + (2 * ((x.Root2 * y.Root6) + (x.Root6 * y.Root2))),
            (x.One * y.Root6) + (x.Root6 * y.One) + (x.Root2 * y.Root3) + (x.Root3 * y.Root2)
        );
    }

    public static Surd operator /(Surd x, Surd y) =>
        y.IsRational ? x.Scaled(Rational.One / y.One) : x * y.Inverse();

    private Surd Scaled(Rational factor) =>
        IsRational ? new(One * factor)
        : new(One * factor, Root2 * factor, Root3 * factor, Root6 * factor);

    // With p = a + b√2 and q = c + d√2 the number is p + q√3; 1/(p + q√3) = (p − q√3)/(p² − 3q²),
    // and p² − 3q² lies in Q(√2), where the same step ends in a rational.
    private Surd Inverse()
    {
        if (IsZero)
        {
            throw new DivideByZeroException("Division of a coordinate by zero.");
        }

        var conjugate = new Surd(One, Root2, -Root3, -Root6);
        var norm = this * conjugate;
        var rational = (norm.One * norm.One) - (2 * norm.Root2 * norm.Root2);
        return conjugate * new Surd(norm.One / rational, -norm.Root2 / rational, default, default);
    }

    public static bool operator <(Surd x, Surd y) => x.CompareTo(y) < 0;

    public static bool operator >(Surd x, Surd y) => x.CompareTo(y) > 0;

    public static bool operator <=(Surd x, Surd y) => x.CompareTo(y) <= 0;

    public static bool operator >=(Surd x, Surd y) => x.CompareTo(y) >= 0;

    public int CompareTo(Surd other) =>
        IsRational && other.IsRational ? One.CompareTo(other.One) : (this - other).Sign;

    /// <summary>−1, 0 or 1, exactly.</summary>
    public int Sign
    {
        get
        {
            if (IsRational)
            {
                return One.Sign;
            }

            double a = One.ToDouble(),
                b = Root2.ToDouble() * Sqrt2,
                c = Root3.ToDouble() * Sqrt3,
                d = Root6.ToDouble() * Sqrt6;
            var sum = a + b + c + d;
            // Each term is within 3 half-ulps and the sum within 3 more: 16 ulps of the absolute sum is generous. Below
            // 1e-290 terms may have lost bits to underflow.
            var error = ((Math.Abs(a) + Math.Abs(b) + Math.Abs(c) + Math.Abs(d)) * 16 * 2.3e-16) + 1e-290;
            return Math.Abs(sum) > error && double.IsFinite(sum) ? Math.Sign(sum) : ExactSign();
        }
    }

    private int ExactSign()
    {
        int p = SignInRoot2(One, Root2),
            q = SignInRoot2(Root3, Root6);
        if (q == 0 || p == q)
        {
            return p;
        }

        if (p == 0)
        {
            return q;
        }

        // p and q√3 pull apart: the larger square wins.
        var rational = (One * One) + (2 * Root2 * Root2) - (3 * ((Root3 * Root3) + (2 * Root6 * Root6)));
        var root2 = 2 * ((One * Root2) - (3 * Root3 * Root6));
        return p * SignInRoot2(rational, root2);
    }

    private static int SignInRoot2(Rational a, Rational b)
    {
        int p = a.Sign,
            q = b.Sign;
        if (q == 0 || p == q)
        {
            return p;
        }

        return p == 0 ? q : p * ((a * a) - (2 * b * b)).Sign;
    }

    /// <summary>A double within a few ulps, for drawing only.</summary>
    public double ToDouble() =>
        One.ToDouble() + (Root2.ToDouble() * Sqrt2) + (Root3.ToDouble() * Sqrt3) + (Root6.ToDouble() * Sqrt6);

    /// <summary>The greatest whole number not above this one, exactly.</summary>
    public BigInteger Floor()
    {
        if (IsRational)
        {
            return One.Floor();
        }

        // Each term's floor is less than one below it, so the sum is at most three steps short.
        var floor = One.Floor() + FloorOfRoot(Root2, 2) + FloorOfRoot(Root3, 3) + FloorOfRoot(Root6, 6);
        while (new Surd((Rational)(floor + 1)) <= this)
        {
            floor += 1;
        }

        return floor;
    }

    // ⌊b√n⌋ for b ≥ 0 is ⌊√⌊b²n⌋⌋; a negative irrational lies one below the mirror of its magnitude's floor.
    private static BigInteger FloorOfRoot(Rational factor, int radicand)
    {
        var root = SquareRoot.Floor((factor * factor * radicand).Floor());
        return factor.Sign < 0 ? -root - 1 : root;
    }

    /// <summary>The one place where an irrational length becomes a measure: up to the next multiple of the step.</summary>
    public Length RoundUpTo(Length step) => step * -(-(this / (Surd)step)).Floor();

    public override string ToString() => SurdText.Format(this);
}
