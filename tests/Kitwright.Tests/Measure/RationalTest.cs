using System.Numerics;
using CsCheck;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Measure;

public sealed class RationalTest
{
    [Fact]
    public void Equality_is_that_of_the_numbers() =>
        Contract.Equality(Generate.Rationals, x => new Rational(x.Numerator * -6, x.Denominator * -6));

    [Fact]
    public void Order_is_that_of_the_numbers() => Contract.Order(Generate.Rationals);

    [Fact]
    public void Addition_is_a_group() => Contract.Addition(Generate.Rationals, (x, y) => x + y, x => -x);

    [Fact]
    public void Default_is_zero()
    {
        Assert.Equal(Rational.Zero, default);
        Assert.Equal(new Rational(0, 7), default);
        Assert.Equal(1, default(Rational).Denominator);
        Assert.Equal("0", default(Rational).ToString());
    }

    [Fact]
    public void Fractions_are_in_lowest_terms_with_a_positive_denominator() =>
        Generate.Rationals.Sample(x =>
        {
            Assert.True(x.Denominator.Sign > 0);
            Assert.Equal(1, BigInteger.GreatestCommonDivisor(x.Numerator, x.Denominator));
        });

    // The reference works on plain fractions n/d in big integers and never reduces.
    [Fact]
    public void Arithmetic_agrees_with_unreduced_fractions() =>
        Gen.Select(Generate.Rationals, Generate.Rationals)
            .Sample(
                (x, y) =>
                {
                    BigInteger a = x.Numerator,
                        b = x.Denominator,
                        c = y.Numerator,
                        d = y.Denominator;
                    Assert.Equal(new Rational((a * d) + (c * b), b * d), x + y);
                    Assert.Equal(new Rational((a * d) - (c * b), b * d), x - y);
                    Assert.Equal(new Rational(a * c, b * d), x * y);
                    Assert.Equal((a * d).CompareTo(c * b), Math.Sign(x.CompareTo(y)));
                    if (!y.IsZero)
                    {
                        Assert.Equal(new Rational(a * d, b * c), x / y);
                    }
                }
            );

    [Fact]
    public void Multiplication_distributes_and_division_undoes_it() =>
        Gen.Select(Generate.Rationals, Generate.Rationals, Generate.NonZero)
            .Sample(
                (x, y, z) =>
                {
                    Assert.Equal((x + y) * z, (x * z) + (y * z));
                    Assert.Equal(x, x * z / z);
                    Assert.Equal(Rational.One, z * (1 / z));
                }
            );

    [Fact]
    public void Floor_and_ceiling_enclose() =>
        Generate.Rationals.Sample(x =>
        {
            Assert.True(x.Floor() <= x && x < x.Floor() + 1);
            Assert.True(x.Ceiling() >= x && x > x.Ceiling() - 1);
            Assert.Equal(x.IsInteger, x.Floor() == x.Ceiling());
        });

    [Fact]
    public void Values_at_the_edge_of_a_long_are_exact()
    {
        BigInteger[] edges = [long.MinValue, -long.MaxValue, -1, 0, 1, long.MaxValue, (BigInteger)long.MaxValue + 1];
        foreach (var a in edges)
        {
            foreach (var b in edges)
            {
                Assert.Equal(a + b, ((Rational)a + (Rational)b).Numerator);
                Assert.Equal(a - b, ((Rational)a - (Rational)b).Numerator);
                Assert.Equal(a * b, ((Rational)a * (Rational)b).Numerator);
                Assert.Equal(a.CompareTo(b), Math.Sign(((Rational)a).CompareTo((Rational)b)));
                if (!b.IsZero)
                {
                    var quotient = (Rational)a / (Rational)b;
                    Assert.Equal(a * quotient.Denominator, b * quotient.Numerator);
                    Assert.True(quotient.Denominator.Sign > 0);
                }
            }
        }
    }

    [Fact]
    public void Small_fractions_become_the_nearest_double() =>
        Gen.Select(Gen.Int, Gen.Int[1, int.MaxValue]).Sample((n, d) => Assert.Equal((double)n / d, new Rational(n, d).ToDouble()));

    [Fact]
    public void Fractions_far_beyond_a_double_still_become_the_nearest()
    {
        var huge = BigInteger.Pow(10, 400);
        Assert.Equal(1.0 / 3, new Rational(huge, 3 * huge).ToDouble());
        Assert.Equal(1.0 / 3, new Rational(huge + 1, (3 * huge) + 1).ToDouble());
        Assert.Equal(double.PositiveInfinity, new Rational(huge, 1).ToDouble());
        Assert.Equal(0, new Rational(1, huge).ToDouble());
        Assert.Equal(1e300, new Rational(BigInteger.Pow(10, 620), BigInteger.Pow(10, 320)).ToDouble());
    }

    [Fact]
    public void Doubles_come_back_exactly() =>
        Gen.Double[-1e6, 1e6].Sample(x =>
        {
            var bits = BitConverter.DoubleToInt64Bits(x);
            var exponent = (int)((bits >> 52) & 0x7FF);
            BigInteger mantissa = (bits & 0xFFFFFFFFFFFFF) | (exponent == 0 ? 0 : 1L << 52);
            var exact = new Rational(x < 0 ? -mantissa : mantissa, BigInteger.One << (1075 - Math.Max(exponent, 1)));
            Assert.Equal(x, exact.ToDouble());
        });

    [Fact]
    public void A_denominator_of_zero_is_a_fault_of_ours()
    {
        Assert.Throws<DivideByZeroException>(() => new Rational(1, 0));
        Assert.Throws<DivideByZeroException>(() => Rational.One / Rational.Zero);
    }
}
