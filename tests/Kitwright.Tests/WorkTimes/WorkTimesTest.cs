using Kitwright.Plans;
using Kitwright.Tests.Piecing;
using Kitwright.WorkTimes;
using Xunit;

namespace Kitwright.Tests.WorkTimes;

public sealed class WorkTimesTest
{
    private static readonly QuiltPlan Plan = DemoPlanTest.Plan(null);
    private static readonly StandardTimes Beginner = StandardTimes.Of(Practice.Beginner);

    /// <summary>
    /// 24 minutes in a shift of 480 are 5 % of the shift, which divides; 10 % of the work multiplies ([KONZ], [SLACK]).
    /// One hour of work is then 60 × 1.10 ÷ 0.95 = 69.47 minutes (own arithmetic).
    /// </summary>
    [Fact]
    public void Standard_time_is_normal_time_with_its_allowances()
    {
        Assert.Equal(0.05, 24.0 / 480);
        Assert.Equal(69.4737, Allowances.Usual.Standard(60), 4);
        Assert.Equal(480, new Allowances(0.05, 0).Standard(456), 9);
        Assert.Equal(110, new Allowances(0, 0.10).Standard(100), 9);
    }

    [Fact]
    public void One_s_own_times_replace_those_measured_and_scale_the_others()
    {
        var own = Beginner.With([new(Operation.Press, 10, 100), new(Operation.Press, 10, 100), new(Operation.SubCut, 20, 560)]);
        Assert.Equal(10, own.Of(Operation.Press));
        Assert.Equal(28, own.Of(Operation.SubCut));
        // Pressing in half the usual time and cutting in twice: the others keep theirs.
        Assert.Equal(Beginner.Of(Operation.Trim), own.Of(Operation.Trim), 9);
        Assert.Equal(Beginner, Beginner.With([]));
    }

    [Fact]
    public void One_s_own_times_are_kept_as_text_and_come_back()
    {
        MeasuredTime[] times = [new(Operation.Press, 20, 190.5), new(Operation.SubCut, 30, 150)];
        Assert.Equal("Press 20 190.5;SubCut 30 150", MeasuredTimes.Write([.. times]));
        Assert.Equal(times, MeasuredTimes.Parse("Press 20 190.5;SubCut 30 150"));
        // What is spoiled is left out, and the rest stays.
        Assert.Equal([times[1]], MeasuredTimes.Parse("Press 0 10;7 1 1;Iron 1 1;Press 1;SubCut 30 150;;Press 1 NaN"));
        Assert.Empty(MeasuredTimes.Parse(null));
    }

    [Theory]
    [InlineData("0", "10")]
    [InlineData("10", "")]
    [InlineData("", "10")]
    [InlineData("-1", "10")]
    [InlineData("ten", "10")]
    [InlineData("10", "NaN")]
    [InlineData("10", "86401")]
    [InlineData("10001", "10")]
    public void What_is_no_time_is_a_finding_with_a_remedy(string count, string seconds)
    {
        var read = MeasuredTimes.Read(Operation.Press, count, seconds);
        Assert.Null(read.Value);
        Assert.Equal("times.bad", read.Finding?.Rule);
    }

    [Fact]
    public void Nothing_measured_is_nothing_wrong()
    {
        var read = MeasuredTimes.Read(Operation.Press, " ", null);
        Assert.Null(read.Value);
        Assert.Null(read.Finding);
    }

    [Fact]
    public void A_quilt_is_the_sum_of_its_steps_and_practice_is_faster()
    {
        var slow = WorkSheet.Of(Plan, Beginner, Allowances.Usual);
        var fast = WorkSheet.Of(Plan, StandardTimes.Of(Practice.Experienced), Allowances.Usual);
        Assert.Equal(Plan.Sewing.Recipes.Length, slow.Steps.Length);
        Assert.True(fast.Sewing < slow.Sewing && fast.Cutting < slow.Cutting && fast.Sewing > 0);
        // Blocks, rows and borders: the blocks alone are less than the whole, and 30 blocks more than one.
        Assert.InRange(slow.Blocks.Sum(b => b.Copies * b.Each), slow.Blocks[0].Each * 15, slow.Sewing);
    }

    [Theory]
    [InlineData(50, 1)]
    [InlineData(601, 15)]
    [InlineData(3600, 60)]
    [InlineData(3 * 3600 + 1, 210)]
    [InlineData(11.2 * 3600, 12 * 60)]
    [InlineData(41 * 3600, 45 * 60)]
    public void Times_are_rounded_up_the_coarser_the_longer(double seconds, int minutes) => Assert.Equal(minutes, Duration.Minutes(seconds));
}
