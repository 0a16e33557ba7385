using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Tests.Pressing;
using Kitwright.Trimming;
using Kitwright.WorkTimes;
using Xunit;

namespace Kitwright.Tests.Trimming;

public sealed class TrimSheetTest
{
    private static TrimSheet Of(QuiltPlan plan, Hands hands, double certainty = 0.99) =>
        TrimSheet.Of(plan, hands, certainty, StandardTimes.Of(Practice.Beginner), Allowances.Usual);

    /// <summary>Courthouse steps of 12 in with two rounds: logs of 2 in come in pairs, and the block itself is not cut into (own arithmetic).</summary>
    [Fact]
    public void Log_rounds_are_squared_from_their_last_seam()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("courthouse-steps", 2, 2))!;
        var sheet = Of(plan, Hands.Usual);
        Assert.All(sheet.Lines, line => Assert.Equal(Length.Inches(2, 1, 4), line.FromSeam));
        Assert.Equal(4, sheet.Lines.Where(line => line.Height == sheet.Lines[0].Height).Sum(line => line.Copies));
        Assert.Contains(sheet.Lines, line => line.Sides == 2);
        Assert.Equal(sheet.Lines.Sum(line => line.Copies * line.Sides), sheet.Trims);
    }

    [Fact]
    public void More_certainty_and_less_even_hands_take_more_cloth()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("shoofly", 2, 2))!;
        var some = Of(plan, Hands.Usual, 0.8).Lines[0];
        var sure = Of(plan, Hands.Usual, 0.999).Lines[0];
        var uneven = Of(plan, Hands.Usual with { CutSpread = 1.0 / 16 }, 0.999).Lines[0];
        Assert.True(some.Generous <= sure.Generous && sure.Generous < uneven.Generous);
        Assert.Null(some.FromSeam);
        // Half-square units of 4 in finished are squared to 4 1/2 in: four a block, four sides.
        Assert.Equal((Length.Inches(4, 1, 2), 4), (some.Width, some.Sides));
        Assert.Equal(16 * 4, Of(plan, Hands.Usual).Trims);
    }

    /// <summary>The wanted certainty is kept: with so much over, as many simulated trims find cloth.</summary>
    [Fact]
    public void The_simulation_finds_cloth_as_often_as_was_wanted()
    {
        var plan = BookQuilt.Plan(BookQuilt.Of("shoofly", 2, 2))!;
        var hands = Hands.Usual with { CutSpread = 1.0 / 32 };
        var line = Of(plan, hands, 0.9).Lines[0];
        var sewn = QuiltAccuracy.Of(plan, hands, line.Generous.InInches.ToDouble(), 2_000).Trimmed;
        Assert.InRange(sewn.TooSmall, 0, 0.1);
    }

    [Theory]
    [InlineData("shoofly", 12)]
    [InlineData("courthouse-steps", 17)]
    public void The_mat_holds_the_largest_unit(string block, int mat) =>
        Assert.Equal(Length.Inches(mat), Of(BookQuilt.Plan(BookQuilt.Of(block, 2, 2))!, Hands.Usual).Mat);
}
