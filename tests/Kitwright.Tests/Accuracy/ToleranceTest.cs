using Kitwright.Accuracy;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Accuracy;

/// <summary>A tolerance of one's own lies between what can be measured and a seam allowance.</summary>
public sealed class ToleranceTest
{
    private static readonly Length Seam = Length.Inches(0, 1, 4);

    [Theory]
    [InlineData("0")]
    [InlineData("1")]
    [InlineData("-1/16")]
    [InlineData("5/16")]
    [InlineData("much")]
    [InlineData(null)]
    public void What_is_no_tolerance_is_a_finding(string? text) =>
        Assert.Equal("accuracy.tolerance-bad", Tolerance.Read(text, LengthUnit.Inch, Seam).Finding?.Rule);

    [Theory]
    [InlineData("1/64", LengthUnit.Inch)]
    [InlineData("1/4", LengthUnit.Inch)]
    [InlineData("0.05", LengthUnit.Centimeter)]
    public void The_ends_of_the_range_are_tolerances(string text, LengthUnit units) => Assert.Null(Tolerance.Read(text, units, Seam).Finding);

    /// <summary>Counted by ticks, the shares are those that are counted block by block.</summary>
    [Fact]
    public void A_share_agrees_with_the_count_of_blocks()
    {
        var quilt = QuiltFile.Read(Repository.Read("examples", "quilts", "skerry-lights.json")).Value!;
        var plan = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan).Value!;
        var sewn = QuiltAccuracy.Sew(plan, Hands.Usual, 500);

        Assert.Equal(sewn.OverSixteenth, sewn.Over(Length.Inches(0, 1, 16)), 9);
        Assert.Equal(sewn.OverEighth, sewn.Over(Length.Inches(0, 1, 8)), 9);
        Assert.True(sewn.Over(Length.Inches(0, 1, 64)) > sewn.OverSixteenth);
    }
}
