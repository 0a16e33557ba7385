using CsCheck;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Measure;

public sealed class LengthTextTest
{
    [Theory]
    [InlineData(31, 8, "3 7/8")]
    [InlineData(1, 4, "1/4")]
    [InlineData(12, 1, "12")]
    [InlineData(-1, 2, "-1/2")]
    [InlineData(-31, 8, "-3 7/8")]
    [InlineData(0, 1, "0")]
    [InlineData(40, 3, "13 1/3")]
    public void Inches_are_mixed_fractions(int numerator, int denominator, string text) =>
        Assert.Equal(text, LengthText.Inches(Length.Inches(new(numerator, denominator))));

    [Fact]
    public void Yards_are_mixed_fractions()
    {
        Assert.Equal("5/8", LengthText.Yards(Length.Inches(22, 1, 2)));
        Assert.Equal("2 1/4", LengthText.Yards(Length.Inches(81)));
        Assert.Equal("1/3", LengthText.Yards(Length.Inches(12)));
    }

    [Theory]
    [InlineData("1 in", "25.4")]
    [InlineData("1/4 in", "6.35")]
    [InlineData("7.5 mm", "7.5")]
    [InlineData("1/64 in", "127/320")]
    [InlineData("1 yd", "914.4")]
    [InlineData("-1 in", "-25.4")]
    public void Millimeters_are_decimal_where_that_is_exact(string length, string text)
    {
        Assert.True(LengthText.TryParse(length, out var value));
        Assert.Equal(text, LengthText.Millimeters(value));
    }

    [Theory]
    [InlineData("3 7/8")]
    [InlineData("3.875")]
    [InlineData("3-7/8")]
    [InlineData("31/8")]
    [InlineData("3⅞")]
    [InlineData("3 ⅞")]
    [InlineData("3 7⁄8")]
    [InlineData(" 3 7/8 ")]
    [InlineData("+3 7/8")]
    [InlineData("3 7/8 in")]
    [InlineData("3 7/8in.")]
    [InlineData("3 7/8\"")]
    [InlineData("3 7/8″")]
    [InlineData("3 7/8 inches")]
    [InlineData("3.875 Inch")]
    [InlineData("98.425 mm")]
    [InlineData("9.8425cm")]
    [InlineData("0.098425 m")]
    [InlineData("31/288 yd")]
    [InlineData("31/96 ft")]
    [InlineData("3\u00A07/8")]
    public void One_length_can_be_written_in_many_ways(string text)
    {
        Assert.True(LengthText.TryParse(text, out var length));
        Assert.Equal(Length.Inches(3, 7, 8), length);
    }

    [Theory]
    [InlineData("¼", 1, 4)]
    [InlineData("½", 1, 2)]
    [InlineData("¾", 3, 4)]
    [InlineData("⅓", 1, 3)]
    [InlineData("⅔", 2, 3)]
    [InlineData("⅛", 1, 8)]
    [InlineData("⅜", 3, 8)]
    [InlineData("⅝", 5, 8)]
    [InlineData("⅞", 7, 8)]
    [InlineData("-½", -1, 2)]
    [InlineData("−½", -1, 2)]
    [InlineData("1½ yd", 54, 1)]
    public void Vulgar_fractions_are_read(string text, int numerator, int denominator)
    {
        Assert.True(LengthText.TryParse(text, out var length));
        Assert.Equal(new Rational(numerator, denominator), length.InInches);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("in")]
    [InlineData("three")]
    [InlineData("3 7/0")]
    [InlineData("3 / / 4")]
    [InlineData("1/2/3")]
    [InlineData("3.8.75")]
    [InlineData("3,875")]
    [InlineData("1e3")]
    [InlineData("0x10")]
    [InlineData("--3")]
    [InlineData("3 furlongs")]
    [InlineData("3/4½")]
    [InlineData("∞")]
    [InlineData("NaN")]
    [InlineData("٣")]
    public void What_is_no_length_is_refused(string? text)
    {
        Assert.False(LengthText.TryParse(text, out var length));
        Assert.Equal(Length.Zero, length);
    }

    [Fact]
    public void A_bare_number_takes_the_unit_that_the_page_stated()
    {
        Assert.True(LengthText.TryParse("1 1/2", out var length, LengthUnit.Yard));
        Assert.Equal(Length.Inches(54), length);
        Assert.True(LengthText.TryParse("1 1/2 in", out length, LengthUnit.Yard));
        Assert.Equal(Length.Inches(1, 1, 2), length);
    }

    [Fact]
    public void Inches_yards_and_millimeters_come_back_exactly() =>
        Generate.Lengths.Sample(length =>
        {
            Assert.True(LengthText.TryParse(LengthText.Inches(length) + " in", out var inches));
            Assert.True(LengthText.TryParse(LengthText.Yards(length) + " yd", out var yards));
            Assert.True(LengthText.TryParse(LengthText.Millimeters(length) + " mm", out var millimeters));
            Assert.Equal(length, inches);
            Assert.Equal(length, yards);
            Assert.Equal(length, millimeters);
        });

    [Fact]
    public void Decimals_are_read_exactly() =>
        Gen.Decimal[-100000, 100000]
            .Sample(number =>
            {
                var text = number.ToString(System.Globalization.CultureInfo.InvariantCulture);
                Assert.True(RationalText.TryParse(text, out var value));
                var bits = decimal.GetBits(number);
                var mantissa = new System.Numerics.BigInteger(new decimal(bits[0], bits[1], bits[2], number < 0, 0));
                Assert.Equal(new Rational(mantissa, System.Numerics.BigInteger.Pow(10, (bits[3] >> 16) & 0xFF)), value);
            });

    [Fact]
    public void Junk_never_throws() =>
        Gen.OneOf(Gen.String, Gen.String["0123456789 /.-+−¼½⅞⁄inydmc\"″e,"])
            .Sample(text =>
            {
                _ = LengthText.TryParse(text, out _);
                _ = RationalText.TryParse(text, out _);
            });

    [Fact]
    public void A_text_without_end_is_refused() => Assert.False(RationalText.TryParse(new string('9', 1_000_000), out _));
}
