using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Binding and backing against published cases.</summary>
public sealed class FinishingTest
{
    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    /// <summary>
    /// [MCD] 54 × 60, + 10, 42 wide: 238 in, 6 strips (2 1/2 in wide assumed). [APQ-CC] 68 1/2 × 90 1/2: 8 strips.
    /// [KSS] 66 × 82 at 2 1/4 in, 40 wide: 8. [APQ-FL] 60 1/2 square in strips of 20 in: the 13 published do not
    /// count what diagonal joins eat; with it, 15.
    /// </summary>
    [Theory]
    [InlineData("238", "2 1/2", "42", 6)]
    [InlineData("328", "2 1/2", "42", 9)]
    [InlineData("306", "2 1/4", "40", 9)]
    [InlineData("252", "2 1/2", "20", 15)]
    [InlineData("424", "2 1/2", "40", 12)]
    [InlineData("40", "2 1/2", "40", 1)]
    public void Strips_count_what_diagonal_joins_eat(string wanted, string width, string strip, int strips)
    {
        Assert.Equal(strips, BindingStrips.Count(Parse(wanted), Parse(width), Parse(strip)));
    }

    /// <summary>The same cases with straight arithmetic, as published: the length over the strip, rounded up.</summary>
    [Theory]
    [InlineData("238", "42", 6)]
    [InlineData("328", "42", 8)]
    [InlineData("306", "40", 8)]
    [InlineData("252", "20", 13)]
    [InlineData("424", "40", 11)]
    public void Without_joins_the_published_counts_come_out(string wanted, string strip, int strips)
    {
        Assert.Equal(strips, BindingStrips.Count(Parse(wanted), Length.Zero, Parse(strip)));
    }

    private static Length Parse(string text) => LengthText.TryParse(text, out var length) ? length : throw new FormatException(text);

    /// <summary>
    /// [APQ-CC]: a 68 1/2 × 90 1/2 top with 4 1/4 in all round is 77 × 99, two panels of 42 in cloth, 198 in =
    /// 5 1/2 yd. [APQ-FL]: 69 square, two panels, 138 in, 3 7/8 yd. No straightening in either.
    /// </summary>
    [Theory]
    [InlineData("68 1/2", "90 1/2", "4 1/4", 2, "198", "5 1/2")]
    [InlineData("60 1/2", "60 1/2", "4 1/4", 2, "138", "3 7/8")]
    public void Backings_come_out_as_published(string width, string height, string over, int panels, string inches, string yards)
    {
        var terms = ClothTerms.Usual with
        {
            UsableWidth = In(42),
            Straightening = Length.Zero,
            Increments = [Length.Yards(new(1, 8))],
        };
        var backing = new Backing("backing", Parse(over), In(0, 1, 2), null);

        var plan = BackingPanels.Of(backing, Parse(width), Parse(height), terms);

        Assert.Equal(panels, plan.Panels);
        Assert.Equal(Parse(inches), plan.PanelLength * plan.Panels);
        Assert.Equal(yards, LengthText.Yards(plan.Purchase));
    }

    /// <summary>
    /// [QB-7400] K5: a 58 1/2 × 72 top, 3 1/2 in each side, one seam: 2 × 65 1/2 across or 2 × 79 down by direction; the
    /// page says 130 and 156 for 65 and 78 (3 in each side on 59 × 72).
    /// </summary>
    [Fact]
    public void The_shorter_way_round_is_bought_unless_the_owner_says()
    {
        var terms = ClothTerms.Usual with { UsableWidth = In(42), Straightening = Length.Zero };
        var backing = new Backing("backing", In(3), In(0, 1, 2), null);

        var best = BackingPanels.Of(backing, In(59), In(72), terms);
        var down = BackingPanels.Of(backing with { Seams = PanelSeams.Down }, In(59), In(72), terms);

        Assert.True(best.Across);
        Assert.Equal((2, In(65)), (best.Panels, best.PanelLength));
        Assert.Equal((2, In(78)), (down.Panels, down.PanelLength));
    }
}
