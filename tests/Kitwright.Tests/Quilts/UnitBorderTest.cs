using System.Collections.Immutable;
using CsCheck;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Borders pieced from units: they fill their ring exactly, or say why they can't.</summary>
public sealed class UnitBorderTest
{
    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    /// <summary>A half-square triangle of a size.</summary>
    private static Block Half(Length side) =>
        Samples.Of("half", side, side, new([new(0, 0), new(side, 0), new(side, side)]), new([new(0, 0), new(side, side), new(0, side)]));

    private static Block Goose(Length wide) =>
        Samples.Of(
            "goose",
            wide,
            wide / 2,
            new([new(0, 0), new(wide / 2, wide / 2), new(0, wide / 2)]),
            new([new(0, 0), new(wide, 0), new(wide / 2, wide / 2)]),
            new([new(wide, 0), new(wide, wide / 2), new(wide / 2, wide / 2)])
        );

    private static Quilt Quilt(Length wide, Length high, Border border, params Block[] units) =>
        Samples.Quilt(
            [Samples.Of("whole", wide, high, Polygon.Rectangle(0, 0, wide, high / 2), Polygon.Rectangle(0, high / 2, wide, high)), .. units],
            new(SettingKind.Straight, 1, 1, [[new("whole", 0, false)]], null),
            border
        );

    private static Border Pieced(string block, Length width, bool corners = true, bool coping = true, int turns = 0) =>
        new(width, "dark", corners ? BorderStyle.CornerSquares : BorderStyle.Butted, corners ? "light" : null, StripGrain.Crosswise)
        {
            Units = new(block, turns, null, coping, null, null, true),
        };

    /// <summary>[CAT]: twenty-four 2 in half-square triangles make a side of 48 in.</summary>
    [Fact]
    public void Twenty_four_triangles_of_two_inches_go_along_48()
    {
        var border = Pieced("half", In(2), coping: false);
        Assert.Equal(new(In(2), 24, 30, Length.Zero, Length.Zero), UnitFit.Of(border, Half(In(2)), In(48), In(60)));
        Assert.Empty(QuiltRules.Check(Quilt(In(48), In(60), border, Half(In(2)))));
    }

    /// <summary>[FRET] W16: seven by seven blocks of 5 1/4 in take 28 border pieces of 5 1/4 by 2 in and four corners.</summary>
    [Fact]
    public void Seven_oblongs_a_side_go_round_seven_blocks()
    {
        var side = In(36, 3, 4);
        var fit = UnitFit.Of(Pieced("bar", In(2), coping: false), Samples.Whole("bar", In(5, 1, 4), In(2)), side, side)!;
        Assert.Equal(28, 2 * (fit.Across + fit.Down));
        Assert.Equal(Length.Zero, fit.CopingAcross + fit.CopingDown);
    }

    /// <summary>Own arithmetic: 50 in takes 17 units of 3 in with 1/2 in beside each end, 61 in takes 21 with 1 in.</summary>
    [Fact]
    public void Coping_strips_make_up_what_whole_units_need()
    {
        var fit = UnitFit.Of(Pieced("half", In(3)), Half(In(6)), In(50), In(61))!;
        Assert.Equal((In(3), 17, 21), (fit.Unit, fit.Across, fit.Down));
        Assert.Equal((In(0, 1, 2), In(1)), (fit.CopingAcross, fit.CopingDown));
        var design = Layout.Of(Quilt(In(50), In(61), Pieced("half", In(3)), Half(In(6))));
        Assert.Equal((In(57), In(69)), (design.Width, design.Height));
        Assert.Equal(2 * (17 + 21), design.Placements.Count(p => p.Id.Value.StartsWith("border/1/", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_strip_thinner_than_half_an_inch_takes_a_unit_more()
    {
        // 47 1/2 in of 2 in units: 24 would leave 1/4 in at each end.
        var fit = UnitFit.Of(Pieced("half", In(2)), Half(In(2)), In(47, 1, 2), In(48))!;
        Assert.Equal((25, In(1, 1, 4)), (fit.Across, fit.CopingAcross));
    }

    [Fact]
    public void A_border_that_cannot_come_out_says_which_width_would()
    {
        var quilt = Quilt(In(45), In(60), Pieced("half", In(2), coping: false), Half(In(2)));
        var finding = Assert.Single(QuiltRules.Check(quilt), f => f.Weight == Weight.Fault);
        Assert.Equal(("quilt.border.units", "/borders/0/units"), (finding.Rule, finding.Place));
        Assert.Equal("exact", finding.Remedy.Slots["found"]);
        var width = Assert.IsType<Length>(finding.Remedy.Slots["width"]);
        Assert.True((In(45) / width).IsInteger && (In(60) / width).IsInteger);
        var mended = quilt with { Borders = [quilt.Borders[0] with { Width = width }] };
        Assert.Empty(QuiltRules.Check(mended));
    }

    [Fact]
    public void Every_proposal_comes_out()
    {
        var border = Pieced("goose", In(3), turns: 1);
        var ways = BorderProposals.Of(border, Goose(In(6)), In(51), In(63), In(0, 1, 8));
        Assert.NotEmpty(ways);
        foreach (var way in ways)
        {
            Assert.True((way.Fit.CopingAcross / In(0, 1, 8)).IsInteger && (way.Fit.CopingDown / In(0, 1, 8)).IsInteger);
            var units = border.Units! with { Across = way.Fit.Across, Down = way.Fit.Down };
            var quilt = Quilt(In(51), In(63), border with { Width = way.Width, Units = units }, Goose(In(6)));
            Assert.Empty(QuiltRules.Check(quilt));
            Assert.Empty(Partition.Check(Samples.WholeTop(Layout.Of(quilt)), ""));
        }
    }

    [Fact]
    public void Runs_and_coping_strips_fill_the_top() =>
        Gen.Select(Gen.Int[8, 40], Gen.Int[8, 40], Gen.Int[4, 12], Gen.Int[0, 3], Gen.Bool, Gen.Bool)
            .Sample(
                (wide, high, width, turns, corners, mirrored) =>
                {
                    var border = Pieced("goose", Length.Inches(new Rational(width, 4)), corners, coping: true, turns);
                    border = border with { Units = border.Units! with { FromMiddle = mirrored } };
                    var quilt = Quilt(Length.Inches(new Rational(wide, 2)), Length.Inches(new Rational(high, 2)), border, Goose(In(4)));
                    Assert.All(QuiltRules.Check(quilt), f => Assert.Equal(("quilt.border.coping", Weight.Note), (f.Rule, f.Weight)));
                    Assert.Empty(Partition.Check(Samples.WholeTop(Layout.Of(quilt)), ""));
                    Assert.Equal(QuiltFile.Write(quilt), QuiltFile.Write(QuiltFile.Read(QuiltFile.Write(quilt)).Value!));
                },
                iter: 40
            );
}
