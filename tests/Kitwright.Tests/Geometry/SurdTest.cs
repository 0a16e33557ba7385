using System.Numerics;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Geometry;

public sealed class SurdTest
{
    private static readonly Surd Root2 = Surd.OfRoot2(1);
    private static readonly Surd Root3 = Surd.OfRoot3(1);
    private static readonly Surd Root6 = Root2 * Root3;

    [Fact]
    public void Equality_is_by_parts() =>
        Contract.Equality(Generate.Surds, x => new Surd(x.One) + (Root2 * x.Root2) + (Root3 * x.Root3) + (Root6 * x.Root6));

    [Fact]
    public void Order_is_total() => Contract.Order(Generate.Surds);

    [Fact]
    public void Addition_is_a_group() => Contract.Addition(Generate.Surds, (x, y) => x + y, x => -x);

    [Fact]
    public void Default_is_zero()
    {
        Assert.Equal(Surd.Zero, default);
        Assert.True(default(Surd).IsZero);
        Assert.Equal(0, default(Surd).Sign);
        Assert.Equal("0", default(Surd).ToString());
    }

    [Fact]
    public void Roots_square_to_their_radicands()
    {
        Assert.Equal(2, Root2 * Root2);
        Assert.Equal(3, Root3 * Root3);
        Assert.Equal(6, Root6 * Root6);
    }

    [Fact]
    public void Multiplication_is_that_of_a_field() =>
        Gen.Select(Generate.Surds, Generate.Surds, Generate.Surds)
            .Sample(
                (x, y, z) =>
                {
                    Assert.Equal(x * y, y * x);
                    Assert.Equal(x * y * z, x * (y * z));
                    Assert.Equal(x * (y + z), (x * y) + (x * z));
                    Assert.Equal(x, x * 1);
                    if (!y.IsZero)
                    {
                        Assert.Equal(1, y / y);
                        Assert.Equal(x, x / y * y);
                    }
                }
            );

    [Fact]
    public void Division_by_zero_is_a_fault_of_ours()
    {
        Assert.Throws<DivideByZeroException>(() => Root2 / Surd.Zero);
        Assert.Throws<DivideByZeroException>(() => Root2 / (Root6 - (Root2 * Root3)));
    }

    [Fact]
    public void Sign_agrees_with_square_roots_to_200_places() =>
        Generate.Surds.Sample(x => Assert.Equal(ReferenceSign(x), x.Sign));

    [Fact]
    public void Sign_respects_products_and_differences() =>
        Gen.Select(Generate.Surds, Generate.Surds)
            .Sample(
                (x, y) =>
                {
                    Assert.Equal(x.Sign * y.Sign, (x * y).Sign);
                    Assert.Equal(x.CompareTo(y), (x - y).Sign);
                    Assert.Equal(x.CompareTo(y), (x + Root6).CompareTo(y + Root6));
                }
            );

    /// <summary>
    /// Convergents p/q of √n lie within 1/q² of it, on either side by turns: from the twentieth on no double can tell
    /// them apart. Recurrences: √2 by p' = p + 2q, q' = p + q; √3 and √6 by the solutions of Pell's equation.
    /// </summary>
    [Theory]
    [InlineData(2, 3, 2)]
    [InlineData(3, 2, 1)]
    [InlineData(6, 5, 2)]
    public void Sign_tells_a_root_from_its_convergents(int radicand, int p1, int q1)
    {
        BigInteger p = p1,
            q = q1;
        Surd root = radicand switch
        {
            2 => Root2,
            3 => Root3,
            _ => Root6,
        };
        for (var i = 0; i < 60; i++)
        {
            // p² − n q² = 1, so p/q is just above the root and nq/p just below.
            Assert.Equal(1, (p * p) - (radicand * q * q));
            Assert.Equal(1, (new Rational(p, q) - root).Sign);
            Assert.Equal(-1, (new Rational(radicand * q, p) - root).Sign);
            Assert.Equal(1, ((Rational)p - (root * (Rational)q)).Sign);
            Assert.Equal(p - 1, (root * (Rational)q).Floor());
            Assert.Equal(-p, (root * (Rational)(-q)).Floor());
            (p, q) = ((p1 * p) + (radicand * q1 * q), (p1 * q) + (q1 * p));
        }
    }

    [Fact]
    public void Sign_tells_roots_from_one_another_when_they_nearly_cancel()
    {
        // (√2 − 1)^k and (√3 − √2)^k shrink fast, and their expanded parts grow as fast.
        Surd x = 1,
            y = 1;
        for (var k = 1; k <= 80; k++)
        {
            x *= Root2 - 1;
            y *= Root3 - Root2;
            Assert.Equal(1, x.Sign);
            Assert.Equal(1, y.Sign);
            Assert.Equal(1, (x - y).Sign);
            Assert.Equal(-1, (-x).Sign);
            Assert.Equal(0, x.Floor());
            Assert.Equal(-1, (-y).Floor());
        }
    }

    [Fact]
    public void Sign_holds_where_doubles_underflow()
    {
        var tiny = new Rational(1, BigInteger.Pow(10, 320));
        Assert.Equal(1, ((Root2 - new Rational(7, 5)) * tiny).Sign);
        Assert.Equal(-1, ((Root3 - new Rational(7, 4)) * tiny).Sign);
    }

    [Fact]
    public void Floor_encloses() =>
        Generate.Surds.Sample(x =>
        {
            var floor = x.Floor();
            Assert.True((Rational)floor <= x);
            Assert.True(x < (Rational)(floor + 1));
        });

    [Fact]
    public void Floor_of_numbers_far_beyond_a_double_is_exact()
    {
        var huge = BigInteger.Pow(10, 400);
        var x = (Root2 * (Rational)huge) - (Root3 * (Rational)huge);
        Assert.True((Rational)x.Floor() <= x && x < (Rational)(x.Floor() + 1));
    }

    [Fact]
    public void Rounding_up_takes_the_least_multiple_that_is_not_below() =>
        Gen.Select(Generate.Surds, Gen.Int[1, 64])
            .Sample(
                (x, denominator) =>
                {
                    var step = Length.Inches(new(1, denominator));
                    var rounded = x.RoundUpTo(step);
                    Assert.True((rounded / step).IsInteger);
                    Assert.True((Surd)rounded >= x);
                    Assert.True((Surd)(rounded - step) < x);
                }
            );

    [Fact]
    public void Text_comes_back_exactly() =>
        Generate.Surds.Sample(x =>
        {
            Assert.True(SurdText.TryParse(SurdText.Format(x), out var back));
            Assert.Equal(x, back);
        });

    [Theory]
    [InlineData("6√2", "6√2")]
    [InlineData("6sqrt2", "6√2")]
    [InlineData("3 7/8", "3 7/8")]
    [InlineData("1/2 + 3/4√2 - √3", "1/2 + 3/4√2 - √3")]
    [InlineData("-√6+1", "1 - √6")]
    [InlineData(" 1½ · √2 ", "1 1/2√2")]
    [InlineData("√2 - √2", "0")]
    [InlineData("3-7/8", "2 1/8")]
    [InlineData("0√2", "0")]
    public void Text_reads_what_people_write(string text, string expected)
    {
        Assert.True(SurdText.TryParse(text, out var value));
        Assert.Equal(expected, SurdText.Format(value));
    }

    [Theory]
    [InlineData("")]
    [InlineData("√")]
    [InlineData("√5")]
    [InlineData("0√5")]
    [InlineData("0√")]
    [InlineData("2 2 √2√3")]
    [InlineData("1 + ")]
    [InlineData("1 + -2")]
    [InlineData("--1")]
    [InlineData("1+1+1+1+1+1+1+1+1")]
    [InlineData("NaN")]
    public void Text_that_is_no_coordinate_is_refused(string text) => Assert.False(SurdText.TryParse(text, out _));

    [Fact]
    public void Junk_never_throws() =>
        Gen.OneOf(Gen.String, Gen.String["0123456789 /√236+-−sqrt½·*."]).Sample(text => { _ = SurdText.TryParse(text, out _); });

    /// <summary>Sign by integer square roots, to 200 decimal places below the smallest part; 0 only for four zero parts.</summary>
    private static int ReferenceSign(Surd x)
    {
        if (x.One.IsZero && x.Root2.IsZero && x.Root3.IsZero && x.Root6.IsZero)
        {
            return 0;
        }

        var scale = BigInteger.Pow(10, 200);
        var common = x.One.Denominator * x.Root2.Denominator * x.Root3.Denominator * x.Root6.Denominator;
        BigInteger Whole(Rational part) => part.Numerator * (common / part.Denominator);
        BigInteger Term(Rational part, int n)
        {
            var whole = Whole(part);
            return whole.Sign * ReferenceRoot(whole * whole * n * scale * scale);
        }

        var sum = (Whole(x.One) * scale) + Term(x.Root2, 2) + Term(x.Root3, 3) + Term(x.Root6, 6);
        // Each root is cut off by less than one unit, so three of them decide unless the sum is within that.
        Assert.True(BigInteger.Abs(sum) > 3);
        return sum.Sign;
    }

    // By bisection, unlike the product's own root.
    private static BigInteger ReferenceRoot(BigInteger square)
    {
        BigInteger low = 0,
            high = BigInteger.One << (int)((square.GetBitLength() / 2) + 1);
        while (high - low > 1)
        {
            var middle = (low + high) >> 1;
            (low, high) = middle * middle <= square ? (middle, high) : (low, middle);
        }

        return low;
    }
}
