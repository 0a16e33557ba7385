using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;

namespace Kitwright.Measure;

/// <summary>
/// An exact fraction of any size, always in lowest terms with a positive denominator.
/// </summary>
/// <remarks>
/// Equality and order are those of the numbers. <c>default</c> is zero: the denominator is stored less one.
/// Unlike <see cref="decimal"/> it never rounds, so thirds of a yard stay thirds. Both parts are held in 64 bits as
/// long as they fit, and in big integers from there on; quilts stay in the first, which take a quarter of the time.
/// </remarks>
public readonly struct Rational
    : IEquatable<Rational>,
        IComparable<Rational>,
        IComparisonOperators<Rational, Rational, bool>
{
    // The parts where both are within ±long.MaxValue, else zero and big set: so each number has one form.
    private readonly long numerator;
    private readonly long denominatorLessOne;
    private readonly Big? big;

    private sealed record Big(BigInteger Numerator, BigInteger Denominator);

    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        }

        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        this = Reduced(numerator / divisor, denominator / divisor);
    }

    public Rational(long numerator, long denominator)
    {
        if (denominator > 0 && numerator != long.MinValue)
        {
            var divisor = GreatestCommonDivisor(numerator, denominator);
            this = new(numerator / divisor, (denominator / divisor) - 1, null);
        }
        else
        {
            this = new((BigInteger)numerator, (BigInteger)denominator);
        }
    }

    private Rational(long numerator, long denominatorLessOne, Big? big)
    {
        this.numerator = numerator;
        this.denominatorLessOne = denominatorLessOne;
        this.big = big;
    }

    private static Rational Reduced(BigInteger numerator, BigInteger denominator) =>
        BigInteger.Abs(numerator) <= long.MaxValue && denominator <= long.MaxValue
            ? new((long)numerator, (long)denominator - 1, null)
            : new(0, 0, new Big(numerator, denominator));

    public BigInteger Numerator => big?.Numerator ?? numerator;
    public BigInteger Denominator => big?.Denominator ?? (BigInteger)denominatorLessOne + 1;
    public int Sign => big is null ? Math.Sign(numerator) : big.Numerator.Sign;
    public bool IsZero => numerator == 0 && big is null;
    public bool IsInteger => big is null ? denominatorLessOne == 0 : big.Denominator.IsOne;

    public static Rational Zero => default;
    public static Rational One => new(1, 0, null);

    public static implicit operator Rational(int value) => new(value, 0, null);

    public static implicit operator Rational(long value) => new(value, 1L);

    public static implicit operator Rational(BigInteger value) => Reduced(value, BigInteger.One);

    public static Rational operator +(Rational x, Rational y) =>
        x.IsZero ? y
        : y.IsZero ? x
        : x.big is null && y.big is null && TryAdd(x, y, out var sum) ? sum
        : new((x.Numerator * y.Denominator) + (y.Numerator * x.Denominator), x.Denominator * y.Denominator);

    public static Rational operator -(Rational x, Rational y) => x + -y;

    public static Rational operator -(Rational x) =>
        x.big is null
            ? new(-x.numerator, x.denominatorLessOne, null)
            : new(0, 0, new Big(-x.big.Numerator, x.big.Denominator));

    public static Rational operator *(Rational x, Rational y) =>
        x.IsZero || y.IsZero ? default
        : x.big is null && y.big is null && TryMultiply(x, y, out var product) ? product
        : new(x.Numerator * y.Numerator, x.Denominator * y.Denominator);

    public static Rational operator /(Rational x, Rational y) =>
        y.IsZero ? throw new DivideByZeroException("Division of a fraction by zero.")
        : y.big is null ? x * Reciprocal(y)
        : new(x.Numerator * y.Denominator, x.Denominator * y.Numerator);

    private static Rational Reciprocal(Rational x) =>
        x.numerator > 0
            ? new(x.denominatorLessOne + 1, x.numerator - 1, null)
            : new(-x.denominatorLessOne - 1, -x.numerator - 1, null);

    // Sum and product of fractions in lowest terms need only small common divisors: D. E. Knuth, The Art of Computer
    // Programming, volume 2, section 4.5.1 (from memory). False where a step leaves 64 bits.
    private static bool TryAdd(Rational x, Rational y, out Rational sum)
    {
        sum = default;
        long d = x.denominatorLessOne + 1,
            e = y.denominatorLessOne + 1;
        var common = GreatestCommonDivisor(d, e);
        if (
            !TryTimes(x.numerator, e / common, out var a)
            || !TryTimes(y.numerator, d / common, out var b)
            || !TryPlus(a, b, out var numerator)
        )
        {
            return false;
        }

        var rest = GreatestCommonDivisor(numerator, common);
        if (!TryTimes(d / common, e / rest, out var denominator))
        {
            return false;
        }

        sum = new(numerator / rest, denominator - 1, null);
        return true;
    }

    private static bool TryMultiply(Rational x, Rational y, out Rational product)
    {
        long d = x.denominatorLessOne + 1,
            e = y.denominatorLessOne + 1,
            across = GreatestCommonDivisor(x.numerator, e),
            back = GreatestCommonDivisor(y.numerator, d);
        var fits =
            TryTimes(x.numerator / across, y.numerator / back, out var numerator)
            & TryTimes(d / back, e / across, out var denominator);
        product = fits ? new(numerator, denominator - 1, null) : default;
        return fits;
    }

    private static bool TryTimes(long x, long y, out long product)
    {
        var high = Math.BigMul(x, y, out product);
        return high == product >> 63 && product != long.MinValue;
    }

    private static bool TryPlus(long x, long y, out long sum)
    {
        sum = unchecked(x + y);
        return ((x ^ sum) & (y ^ sum)) >= 0 && sum != long.MinValue;
    }

    /// <summary>Stein's binary algorithm; <paramref name="y"/> is positive and neither is long.MinValue.</summary>
    private static long GreatestCommonDivisor(long x, long y)
    {
        if (y == 1 || x == 0)
        {
            return y;
        }

        x = Math.Abs(x);
        var twos = BitOperations.TrailingZeroCount(x | y);
        x >>= BitOperations.TrailingZeroCount(x);
        while (y != 0)
        {
            y >>= BitOperations.TrailingZeroCount(y);
            (x, y) = (Math.Min(x, y), Math.Abs(x - y));
        }

        return x << twos;
    }

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
        if (big is null)
        {
            var (whole, over) = Math.DivRem(numerator, denominatorLessOne + 1);
            return over < 0 ? whole - 1 : whole;
        }

        var quotient = BigInteger.DivRem(big.Numerator, big.Denominator, out var rest);
        return rest.Sign < 0 ? quotient - 1 : quotient;
    }

    /// <summary>The least whole number that is not below this one.</summary>
    public BigInteger Ceiling() => -(-this).Floor();

    /// <summary>The nearest double; for drawing and for filters that are checked exactly, never for a measure.</summary>
    public double ToDouble()
    {
        // Both parts are doubles themselves: one division, rounded once.
        if (big is null && Math.Abs(numerator) < 1L << 53 && denominatorLessOne < 1L << 53)
        {
            return (double)numerator / (denominatorLessOne + 1);
        }

        // A quotient of 62 or 63 bits, its last bit set where something was cut off, rounds to the nearest double.
        BigInteger n = BigInteger.Abs(Numerator),
            d = Denominator;
        var shift = 62 - (int)(n.GetBitLength() - d.GetBitLength());
        var quotient =
            shift >= 0 ? BigInteger.DivRem(n << shift, d, out var rest) : BigInteger.DivRem(n, d << -shift, out rest);
        var bits = (ulong)quotient | (rest.IsZero ? 0UL : 1UL);
        return Math.ScaleB(Sign * (double)bits, -shift);
    }

    public bool Equals(Rational other) =>
        numerator == other.numerator && denominatorLessOne == other.denominatorLessOne && Equals(big, other.big);

    public override bool Equals([NotNullWhen(true)] object? obj) =>
        obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(numerator, denominatorLessOne, big);

    public int CompareTo(Rational other)
    {
        if (big is not null || other.big is not null)
        {
            return (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);
        }

        if (denominatorLessOne == other.denominatorLessOne)
        {
            return numerator.CompareTo(other.numerator);
        }

        var high = Math.BigMul(numerator, other.denominatorLessOne + 1, out var low);
        var otherHigh = Math.BigMul(other.numerator, denominatorLessOne + 1, out var otherLow);
        return high == otherHigh ? unchecked((ulong)low).CompareTo(unchecked((ulong)otherLow)) : high.CompareTo(otherHigh);
    }

    /// <summary>"7", "-7/2": for files and logs. Screens and paper use <see cref="LengthText"/>.</summary>
    public override string ToString() =>
        IsInteger
            ? Numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");
}
