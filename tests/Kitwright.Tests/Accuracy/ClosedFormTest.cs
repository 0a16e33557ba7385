using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Tests.Pressing;
using Xunit;

namespace Kitwright.Tests.Accuracy;

/// <summary>Sums of errors: published examples, and the simulation against the closed form.</summary>
public sealed class ClosedFormTest
{
    private static readonly Hands Exact = new(0, 0, 0, 0, 0, 0, 0);

    /// <summary>A border of 24 half-square triangles: 23 seams lose 1/16 in each, 1 7/16 in all ([CAT]).</summary>
    [Fact]
    public void Twenty_three_seams_lose_almost_an_inch_and_a_half() =>
        Assert.Equal(-1.4375, ClosedForm.Row(24, Exact with { Fold = 1.0 / 16 }).Mean(Exact with { Fold = 1.0 / 16 }), 12);

    /// <summary>
    /// A nine-patch row has two seams that each take 1/16 in too much of two fabrics: 1/4 in; cut 1/16 in small at four
    /// edges as well it loses another 1/4 in, 1/2 in all ([PWT-P]; its four edges are two pieces here).
    /// </summary>
    [Fact]
    public void A_nine_patch_loses_a_quarter_inch_by_seams_and_as_much_by_cuts()
    {
        var seams = Exact with { SeamBias = 1.0 / 16 };
        Assert.Equal(-0.25, ClosedForm.Row(3, seams).Mean(seams), 12);
        Assert.Equal(-0.5, ClosedForm.Row(3, seams).Mean(seams) - (4.0 / 16), 12);
    }

    /// <summary>Eight seams off by 1/16 in make 1/2 in ([DECOR]); four by 1/8 in make 1/2 in ([QCON]).</summary>
    [Theory]
    [InlineData(8, 16)]
    [InlineData(4, 8)]
    public void Errors_of_seams_add_up(int seams, int part)
    {
        var hands = Exact with { Fold = 1.0 / part };
        Assert.Equal(-0.5, ClosedForm.Row(seams + 1, hands).Mean(hands), 12);
    }

    /// <summary>57 squares of 2 in finished that come out as 1 29/32 in: 108.66 in instead of 114 ([QWU]).</summary>
    [Fact]
    public void Fifty_seven_squares_lose_five_inches() =>
        Assert.Equal(108.66, 57 * (2 + LengthOff(Length.Inches(0, -3, 32))), 2);

    private static double LengthOff(Length each) => each.InInches.ToDouble();

    /// <summary>The variance of a sum of independent parts is the sum of their variances (any textbook of statistics).</summary>
    [Fact]
    public void Spreads_add_up_as_squares()
    {
        var hands = Exact with { CutSpread = 0.03, SeamSpread = 0.02, FoldSpread = 0.01 };
        var row = ClosedForm.Row(9, hands);
        Assert.Equal((9 * 0.0009) + (8 * ((4 * 0.0004) + 0.0001)), row.Variance, 12);
    }

    /// <summary>Sewn ten thousand times at a fixed seed, the mean width of the top lies within 4 standard errors of the closed form.</summary>
    [Theory]
    [InlineData("nine-patch")]
    [InlineData("courthouse-steps")]
    [InlineData("sawtooth-star")]
    public void The_simulation_agrees_with_the_closed_form(string block)
    {
        var plan = BookQuilt.Plan(BookQuilt.Of(block, 3, 3))!;
        var hands = Hands.Usual with { CutBias = 0.01, SeamBias = 0.004 };
        var accuracy = QuiltAccuracy.Of(plan, hands, generous: 0.125, quilts: 10_000, seed: 7);
        var (sewn, closed) = (accuracy.Untrimmed.Across, accuracy.ClosedTop);
        Assert.InRange(sewn.Mean, closed.Mean(hands) - (4 * sewn.StandardError), closed.Mean(hands) + (4 * sewn.StandardError));
        // The standard error of a deviation is deviation / √(2n).
        var error = 4 * closed.Deviation / Math.Sqrt(2 * 10_000);
        Assert.InRange(sewn.Deviation, closed.Deviation - error, closed.Deviation + error);
    }

    [Fact]
    public void The_same_seed_gives_the_same_quilts()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("shoofly", 2, 2))!;
        var (one, two) = (QuiltAccuracy.Of(plan, Hands.Usual, 0.125, 500), QuiltAccuracy.Of(plan, Hands.Usual, 0.125, 500));
        Assert.Equal(one.Untrimmed.Block, two.Untrimmed.Block);
        Assert.Equal(one.Untrimmed.Bins, two.Untrimmed.Bins);
        Assert.NotEqual(one.Untrimmed.Block, QuiltAccuracy.Of(plan, Hands.Usual, 0.125, 500, seed: 2).Untrimmed.Block);
    }

    /// <summary>With no error at all everything is as designed; trimming never makes blocks worse in usual hands.</summary>
    [Fact]
    public void Exact_hands_sew_exact_quilts()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("shoofly", 2, 2))!;
        var exact = QuiltAccuracy.Of(plan, Exact, 0.125, 100);
        Assert.Equal(0, exact.Untrimmed.Block.Mean, 12);
        Assert.Equal(0, exact.Untrimmed.OverSixteenth);
        var usual = QuiltAccuracy.Of(plan, Hands.Usual.WithTrueSeam(), 0.125, 2_000);
        Assert.True(usual.Trimmed.OverSixteenth <= usual.Untrimmed.OverSixteenth);
        Assert.True(usual.Untrimmed.Block.Mean < 0);
    }
}
