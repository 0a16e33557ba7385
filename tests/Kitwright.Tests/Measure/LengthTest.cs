using CsCheck;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Measure;

public sealed class LengthTest
{
    [Fact]
    public void Equality_is_that_of_the_numbers() =>
        Contract.Equality(Generate.Lengths, x => Length.Millimeters(x.InMillimeters));

    [Fact]
    public void Order_is_that_of_the_numbers() => Contract.Order(Generate.Lengths);

    [Fact]
    public void Addition_is_a_group() => Contract.Addition(Generate.Lengths, (x, y) => x + y, x => -x);

    [Fact]
    public void Default_is_zero()
    {
        Assert.Equal(Length.Zero, default);
        Assert.Equal("0 in", default(Length).ToString());
    }

    // 1 yd = 0.9144 m exactly [WIKI-YD].
    [Fact]
    public void A_yard_is_914_point_4_millimeters()
    {
        Assert.Equal(new Rational(9144, 10), Length.Yard.InMillimeters);
        Assert.Equal(Length.Yard, Length.Millimeters(new(9144, 10)));
        Assert.Equal(36, Length.Yard.InInches);
    }

    [Fact]
    public void Units_convert_both_ways_without_loss() =>
        Generate.Rationals.Sample(x =>
        {
            Assert.Equal(x, Length.Inches(x).InInches);
            Assert.Equal(x, Length.Yards(x).InYards);
            Assert.Equal(x, Length.Millimeters(x).InMillimeters);
            Assert.Equal(x, LengthText.Of(x, LengthUnit.Centimeter).InMillimeters / 10);
            Assert.Equal(x, LengthText.Of(x, LengthUnit.Foot).InInches / 12);
            Assert.Equal(x, LengthText.Of(x, LengthUnit.Meter).InMillimeters / 1000);
        });

    [Fact]
    public void Ticks_hold_sixty_fourths_of_an_inch_and_millimeters()
    {
        Assert.Equal(Length.Inches(new(1, 64)), Length.Ticks(127));
        Assert.Equal(Length.Millimeters(1), Length.Ticks(320));
    }

    [Fact]
    public void Ticks_come_back_exactly() =>
        Gen.Long.Sample(ticks =>
        {
            Assert.True(Length.Ticks(ticks).TryTicks(out var back));
            Assert.Equal(ticks, back);
        });

    [Fact]
    public void A_length_off_the_grid_has_no_ticks()
    {
        Assert.False(Length.Inches(new(1, 3)).TryTicks(out _));
        Assert.False(Length.Inches(new(1, 128)).TryTicks(out _));
        Assert.False(Length.Inches(long.MaxValue).TryTicks(out _));
    }

    [Fact]
    public void Rounding_takes_the_nearest_multiple_on_the_named_side() =>
        Gen.Select(Generate.Lengths, Gen.Int[1, 64])
            .Sample(
                (x, denominator) =>
                {
                    var step = Length.Inches(new(1, denominator));
                    Length up = x.RoundUpTo(step),
                        down = x.RoundDownTo(step);
                    Assert.True((up / step).IsInteger && (down / step).IsInteger);
                    Assert.True(down <= x && x <= up);
                    Assert.Equal(up == down ? Length.Zero : step, up - down);
                    Assert.Equal(up, up.RoundUpTo(step));
                    Assert.Equal(-down, (-x).RoundUpTo(step));
                }
            );

    [Fact]
    public void Scaling_and_ratios_undo_one_another() =>
        Gen.Select(Generate.Lengths, Generate.NonZero)
            .Sample(
                (x, factor) =>
                {
                    Assert.Equal(x, x * factor / factor);
                    Assert.Equal(x * factor, factor * x);
                    if (!x.IsZero)
                    {
                        Assert.Equal(factor, x * factor / x);
                    }
                }
            );

    [Fact]
    public void Least_and_greatest_are_of_the_two() =>
        Gen.Select(Generate.Lengths, Generate.Lengths)
            .Sample(
                (x, y) =>
                {
                    Assert.Equal(x + y, Length.Min(x, y) + Length.Max(x, y));
                    Assert.True(Length.Min(x, y) <= Length.Max(x, y));
                }
            );
}
