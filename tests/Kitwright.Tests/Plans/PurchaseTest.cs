using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Plans;

/// <summary>From the length that is needed to the length that is sold.</summary>
public sealed class PurchaseTest
{
    private static readonly ClothTerms Eighths = ClothTerms.Usual with { Increments = [Length.Yards(new(1, 8))] };

    [Theory]
    // Backing of 69 by 69 in from 42 in cloth: 2 × 69 = 138 in, 3 7/8 yd [APQ-FL].
    [InlineData("138", "139 1/2")]
    // Cornerstones, 7 strips of 2 1/2 in: 1/2 yd [KSS].
    [InlineData("17 1/2", "18")]
    // Four strips of 2 1/2 in: 3/8 yd [ANN].
    [InlineData("10", "13 1/2")]
    // Exactly a step needs no more (own arithmetic).
    [InlineData("9", "9")]
    public void Published_lengths_are_sold_in_eighths_of_a_yard(string need, string sold) =>
        Assert.Equal(Of(sold), Eighths.Purchase(Of(need)));

    // 11 binding strips of 2 1/2 in are 27 1/2 in; [QB-BM] prints 26.5 in and 3/4 yd, half an inch short.
    [Fact]
    public void Half_an_inch_over_a_step_takes_the_next()
    {
        var need = Of("2 1/2") * 11;
        Assert.True(need > Length.Yards(new(3, 4)));
        Assert.Equal(Length.Yards(new(7, 8)), Eighths.Purchase(need));
        Assert.True(Of("26.5") < need);
    }

    [Fact]
    public void Thirds_of_a_yard_are_sold_too_by_default()
    {
        Assert.Equal(Length.Yards(new(1, 3)), ClothTerms.Usual.Purchase(Of("10")));
        Assert.Equal(Length.Yards(new(2, 3)), ClothTerms.Usual.Purchase(Of("23")));
        Assert.Equal(Length.Yards(new(3, 8)), ClothTerms.Usual.Purchase(Of("12 1/8")));
    }

    [Fact]
    public void Nothing_is_sold_below_the_minimum_cut()
    {
        Assert.Equal(Of("4 1/2"), ClothTerms.Usual.Purchase(Of("1")));
        Assert.Equal(Length.Yard, (ClothTerms.Usual with { MinimumCut = Length.Yard }).Purchase(Of("1")));
    }

    [Fact]
    public void What_is_sold_is_enough_a_multiple_of_a_step_and_grows_with_the_need() =>
        CsCheck.Check.Sample(
            Generate.Small,
            inches =>
            {
                var need = Length.Inches(Rational.Abs(inches));
                var sold = ClothTerms.Usual.Purchase(need);
                Assert.True(sold >= need);
                Assert.Contains(ClothTerms.Usual.Increments, step => (sold / step).IsInteger);
                Assert.True(sold <= ClothTerms.Usual.Purchase(need + Length.Inches(new(1, 8))));
                Assert.True(Eighths.Purchase(need) >= sold);
            }
        );

    private static Length Of(string inches)
    {
        Assert.True(LengthText.TryParse(inches, out var length));
        return length;
    }
}
