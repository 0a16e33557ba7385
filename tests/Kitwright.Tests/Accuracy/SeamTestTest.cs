using Kitwright.Accuracy;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Accuracy;

/// <summary>Three strips of 1 1/2 in give 3 1/2 in, the middle exactly 1 in ([QCON], [SIB]).</summary>
public sealed class SeamTestTest
{
    private static Length In(int numerator, int denominator) => Length.Inches(0, numerator, denominator);

    [Fact]
    public void A_right_seam_leaves_the_needle_where_it_is()
    {
        var test = new SeamTest(Length.Inches(3, 1, 2), Length.Inch);
        Assert.Equal(Length.Zero, test.NeedleOffset);
        Assert.Equal(Length.Zero, test.CutWider);
    }

    /// <summary>1/16 in short over two seams, the middle 1/32 in short: each seam takes 1/32 in, so 1/64 in to the edge (own arithmetic).</summary>
    [Fact]
    public void A_wide_seam_moves_the_needle_toward_the_edge()
    {
        var test = new SeamTest(Length.Inches(3, 7, 16), In(31, 32));
        Assert.Equal(Length.Zero, test.CutWider);
        Assert.Equal(In(1, 32), test.SeamTakes);
        Assert.Equal(In(1, 64), test.NeedleOffset);
    }

    /// <summary>Strips cut 1/32 in wide and seams right: 3/32 in too much across, 1/32 in in the middle (own arithmetic).</summary>
    [Fact]
    public void A_wide_cut_is_told_from_a_scant_seam()
    {
        var test = new SeamTest(Length.Inches(3, 19, 32), Length.Inches(1, 1, 32));
        Assert.Equal(In(1, 32), test.CutWider);
        Assert.Equal(Length.Zero, test.NeedleOffset);
        Assert.Equal(1.0 / 32, test.Hands(Hands.Usual).CutBias);
        Assert.Equal(0, test.Hands(Hands.Usual).Take, 12);
    }

    /// <summary>Strips of 4 cm with seams of 7.5 mm: 9 cm across, 2.5 cm in the middle (own arithmetic: 12 − 3 and 4 − 1.5).</summary>
    [Fact]
    public void The_metric_test_has_metric_strips()
    {
        var test = SeamTest.For(LengthUnit.Centimeter, Length.Millimeters(new(15, 2)), Length.Millimeters(88), Length.Millimeters(24));
        Assert.Equal((Length.Millimeters(90), Length.Millimeters(25)), (test.AcrossWanted, test.MiddleWanted));
        // Each seam takes 1 mm too much: half of it on the needle.
        Assert.Equal((Length.Zero, Length.Millimeters(new(1, 2))), (test.CutWider, test.NeedleOffset));
    }

    [Fact]
    public void Half_an_inch_off_is_no_test()
    {
        Assert.True(new SeamTest(Length.Inches(3), Length.Inch).IsPlausible);
        Assert.False(new SeamTest(Length.Inches(2), Length.Inch).IsPlausible);
    }

    /// <summary>Above 1.96 deviations lie 2.5 % (any table of the normal distribution).</summary>
    [Fact]
    public void The_normal_distribution_is_that_of_the_tables()
    {
        Assert.Equal(0.024998, Normal.Above(1.96), 6);
        Assert.Equal(0.5, Normal.Above(0), 6);
        Assert.Equal(2.3263, Normal.Beyond(0.01), 3);
    }
}
