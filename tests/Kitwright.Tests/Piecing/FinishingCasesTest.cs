using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Published cases of binding, borders and backing that differ from ours or meet us half way: both figures.</summary>
public sealed class FinishingCasesTest
{
    private static readonly ClothTerms Bare = ClothTerms.Usual with { UsableWidth = In(42), Straightening = Length.Zero, Increments = [Length.Yards(new(1, 4))] };

    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    private static Length Parse(string text) => LengthText.TryParse(text, out var length) ? length : throw new FormatException(text);

    /// <summary>
    /// [PFL-B] 42 in cloth, no overhang, quarter yards. The chart has 3 yd for 48 × 54 and 48 × 60: with the seams the
    /// other way round two panels of 48 in are 96 in, 2 3/4 yd.
    /// </summary>
    [Theory]
    [InlineData("28", "28", "1")]
    [InlineData("28", "40", "1")]
    [InlineData("34", "44", "1 1/4")]
    [InlineData("40", "52", "1 1/2")]
    [InlineData("42", "56", "1 3/4")]
    [InlineData("48", "54", "2 3/4")]
    [InlineData("48", "60", "2 3/4")]
    public void A_backing_chart(string width, string height, string yards) =>
        Assert.Equal(yards, LengthText.Yards(BackingPanels.Of(new("backing", Length.Zero, In(0, 1, 2), null), Parse(width), Parse(height), Bare).Purchase));

    /// <summary>
    /// [QB-MC] K1: 80 × 56 from two widths of 40 in: 112 in, 3 1/2 yd "with seam and ends". A seam takes an inch of 80,
    /// so two widths are 79: the panels run the long way, or three of them the short way.
    /// </summary>
    [Fact]
    public void Two_widths_of_40_do_not_make_80()
    {
        var backing = new Backing("backing", Length.Zero, In(0, 1, 2), PanelSeams.Down);
        var terms = Bare with { UsableWidth = In(40) };

        Assert.Equal(2, BackingPanels.Count(In(79), In(40), In(0, 1, 2)));
        Assert.Equal(3, BackingPanels.Of(backing, In(80), In(56), terms).Panels);
        var across = BackingPanels.Of(backing with { Seams = PanelSeams.Across }, In(80), In(56), terms);
        Assert.Equal((2, In(80)), (across.Panels, across.PanelLength));
    }

    /// <summary>
    /// [STC] K3: a 40 × 45 top takes "about 1 1/2 yd": 45 + 6 = 51 in, 1.42 yd of cloth wide enough. [MSQC-K] K7: 51 ×
    /// 61 and 4 in more in all, 55 × 65; 65 / 36 = 1.8 a panel. [CTOWN] W21: 70 × 80 without overhang, 160 in = 4.44 yd,
    /// sold as 4 2/3.
    /// </summary>
    [Fact]
    public void Published_panels()
    {
        var three = new Backing("backing", In(3), In(0, 1, 2), PanelSeams.Down);

        Assert.Equal("1 1/2", LengthText.Yards(BackingPanels.Of(three, In(40), In(45), Bare with { UsableWidth = In(60) }).Purchase));
        Assert.Equal((In(55), In(65)), Size(BackingPanels.Of(three with { Overhang = In(2) }, In(51), In(61), Bare)));
        var goose = BackingPanels.Of(three with { Overhang = Length.Zero }, In(70), In(80), Bare);
        Assert.Equal((2, In(160), "4 1/2"), (goose.Panels, goose.PanelLength * goose.Panels, LengthText.Yards(goose.Purchase)));

        static (Length, Length) Size(BackingPlan plan) => (plan.Width, plan.Height);
    }

    /// <summary>[QTHER] K8: two 5 yd lengths of 42 in with 5/8 in seams cover 82 3/4 in, and not an eighth more.</summary>
    [Fact]
    public void Two_lengths_with_wide_seams()
    {
        Assert.Equal(2, BackingPanels.Count(In(82, 3, 4), In(42), In(0, 5, 8)));
        Assert.Equal(3, BackingPanels.Count(In(82, 7, 8), In(42), In(0, 5, 8)));
    }

    /// <summary>
    /// [CPF] B5: 180 / 42 = 4.29 × 3 1/2 = 15 in; whole strips are five, 17 1/2 in, and 1/2 yd holds both. [LHQ2] B7: 114
    /// in from 45 in strips, 2 1/2 strips and 1/2 and a spare: ours are three with their joins, and a spare.
    /// </summary>
    [Fact]
    public void Whole_binding_strips()
    {
        Assert.Equal(5, BindingStrips.Count(In(180), Length.Zero, In(42)));
        Assert.Equal(Length.Yards(new(1, 2)), ClothTerms.Usual.Purchase(In(3, 1, 2) * 5));
        Assert.Equal(3, BindingStrips.Count(In(114), In(2, 1, 2), In(45)));
    }

    /// <summary>
    /// [MSQC-BO] B11: a 5 in border of a 40 × 50 top "by adding lengths" is 112 in, 3 1/4 yd. In strips of 5 1/2 in it is
    /// less than a third of that. [GQP-B] B9: 254 in of 5 in border from seven strips of 42 in is enough.
    /// </summary>
    [Fact]
    public void A_border_is_not_bought_by_its_length()
    {
        var quilt = Sample.Quilt(1, "a", "rim") with
        {
            Blocks = [new("star", "Top", In(40), In(50), new(1, 1), [new("1", "a", [new(0, 0), new(40, 0), new(40, 50), new(0, 50)], [])])],
            Borders = [new(In(5), "rim", BorderStyle.Butted, null, StripGrain.Crosswise)],
        };
        var options = PlanOptions.Usual with { Terms = ClothTerms.Usual with { UsableWidth = In(60) } };
        var rim = QuiltPlanner.Plan(quilt, null, [], options, FirstFit.Plan).Value!.Cloths.Single(c => c.Roles.Contains("rim"));

        Assert.Equal((4, In(22, 1, 2)), (rim.Figures.Strips, rim.Cut));
        Assert.True(rim.Purchase * 3 < Length.Yards(new(13, 4)));
        Assert.True(In(42) * 7 >= In(254));
    }

    /// <summary>
    /// [OZARK] C5: 1/8 yd gives at least 14 squares of 3 in and 1/4 yd at least 28. [QB-PQ] Y11: 1200 / 1500 = .8 yd for
    /// 12 blocks is an area: pieces are not laid so, and no yardage here is ever worked out from one.
    /// </summary>
    [Fact]
    public void Squares_of_three_inches_from_part_yards()
    {
        Assert.Equal(1, Strips(14));
        Assert.Equal(2, Strips(28));
        Assert.True(In(3) * 2 <= Length.Yards(new(1, 4)));

        static int Strips(int count)
        {
            var problem = new ClothProblem(new("cloth/A"), "A", ["a"], null, Bare, [new(new("piece/A1"), "A1", In(3), In(3), count, true)], 0, CutGoal.ByTheInch);
            return FirstFit.Plan(problem).Value!.Figures.Strips;
        }
    }
}
