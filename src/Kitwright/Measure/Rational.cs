using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;

namespace Kitwright.Measure;

/// <summary>
/// An exact fraction of any size, always in lowest terms with a positive denominator.
/// </summary>
/// <remarks>
/// Equality and order are those of the numbers. <c>default</c> is zero: the denominator is stored less one.
/// Unlike <see cref="decimal"/> it never rounds, so thirds of a yard stay thirds.
/// </remarks>
public readonly struct Rational
    : IEquatable<Rational>,
        IComparable<Rational>,
        IComparisonOperators<Rational, Rational, bool>
{
    private readonly BigInteger denominatorLessOne;

    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        }

        if (!denominator.IsOne)
        {
            var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
            if (denominator.Sign < 0)
            {
                divisor = -divisor;
            }

            if (!divisor.IsOne)
            {
                numerator /= divisor;
                denominator /= divisor;
            }
        }

        Numerator = numerator;
        denominatorLessOne = denominator - 1;
    }

    public BigInteger Numerator { get; }
    public BigInteger Denominator => denominatorLessOne + 1;
    public int Sign => Numerator.Sign;
    public bool IsZero => Numerator.IsZero;
    public bool IsInteger => denominatorLessOne.IsZero;

    public static Rational Zero => default;
    public static Rational One => new(1, 1);

    public static implicit operator Rational(int value) => new(value, 1);

    public static implicit operator Rational(long value) => new(value, 1);

    public static implicit operator Rational(BigInteger value) => new(value, 1);

    public static Rational operator +(Rational x, Rational y) =>
        x.denominatorLessOne == y.denominatorLessOne
            ? new(x.Numerator + y.Numerator, x.Denominator)
            : new(
                (x.Numerator * y.Denominator) + (y.Numerator * x.Denominator),
                x.Denominator * y.Denominator
            );

    public static Rational operator -(Rational x, Rational y) => x + -y;

    public static Rational operator -(Rational x) => new(-x.Numerator, x.Denominator);

    public static Rational operator *(Rational x, Rational y) =>
        new(x.Numerator * y.Numerator, x.Denominator * y.Denominator);

    public static Rational operator /(Rational x, Rational y) =>
        new(x.Numerator * y.Denominator, x.Denominator * y.Numerator);

    public static bool operator ==(Rational x, Rational y) => x.Equals(y);

    public static bool operator !=(Rational x, Rational y) => !x.Equals(y);

    public static bool operator <(Rational x, Rational y) => x.CompareTo(y) < 0;

    public static bool operator >(Rational x, Rational y) => x.CompareTo(y) > 0;

    public static bool operator <=(Rational x, Rational y) => x.CompareTo(y) <= 0;

    public static bool operator >=(Rational x, Rational y) => x.CompareTo(y) >= 0;

    public static Rational Abs(Rational x) => x.Sign < 0 ? -x : x;

    public static Rational Min(Rational x, Rational y) => x <= y ? x : y;

    public static Rational Max(Rational x, Rational y) => x >= y ? x : y;

    /// <summary>The greatest whole number that is not above this one.</summary>
    public BigInteger Floor()
    {
        var quotient = BigInteger.DivRem(Numerator, Denominator, out var rest);
        return rest.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The least whole number that is not below this one.</summary>
    public BigInteger Ceiling() => -(-this).Floor();

    /// <summary>The nearest double; for drawing and for filters that are checked exactly, never for a measure.</summary>
    public double ToDouble()
    {
        if (Numerator.IsZero)
        {
            return 0;
        }

        // A quotient of 62 or 63 bits, its last bit set where something was cut off, rounds to the nearest double.
        BigInteger numerator = BigInteger.Abs(Numerator),
            denominator = Denominator;
        var shift = 62 - (int)(numerator.GetBitLength() - denominator.GetBitLength());
        var quotient =
            shift >= 0
                ? BigInteger.DivRem(numerator << shift, denominator, out var rest)
                : BigInteger.DivRem(numerator, denominator << -shift, out rest);
        var bits = (ulong)quotient | (rest.IsZero ? 0UL : 1UL);
        return Math.ScaleB(Sign * (double)bits, -shift);
    }

    public bool Equals(Rational other) =>
        Numerator == other.Numerator && denominatorLessOne == other.denominatorLessOne;

    public override bool Equals([NotNullWhen(true)] object? obj) =>
        obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, denominatorLessOne);

    public int CompareTo(Rational other) =>
        denominatorLessOne == other.denominatorLessOne
            ? Numerator.CompareTo(other.Numerator)
            : (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>"7", "-7/2": for files and logs. Screens and paper use <see cref="LengthText"/>.</summary>
    public override string ToString() =>
        IsInteger
            ? Numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
}
