using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Border strips, bias binding and batting against published cases.</summary>
public sealed class BorderCutsTest
{
    private static Length In(int whole, int numerator = 0, int denominator = 1) => Length.Inches(whole, numerator, denominator);

    private static Length Parse(string text) => LengthText.TryParse(text, out var length) ? length : throw new FormatException(text);

    /// <summary>
    /// [APQ-MIT]: a side of 40 in and a border of 5 in take a strip of 40 + 10 + 6 = 56 in. [QH370]: 17 1/2 + 7 + 6 =
    /// 30 1/2 and 22 1/2 + 7 + 6 = 35 1/2 for borders of 3 1/2 in.
    /// </summary>
    [Theory]
    [InlineData("40", "5", "56")]
    [InlineData("17 1/2", "3 1/2", "30 1/2")]
    [InlineData("22 1/2", "3 1/2", "35 1/2")]
    public void Mitered_strips_are_the_side_two_widths_and_six_inches(string side, string width, string strip)
    {
        var pieced = Bordered(Parse(side), Parse(side), new(Parse(width), "rim", BorderStyle.Mitered, null, StripGrain.Lengthwise));

        var piece = Assert.Single(pieced.Pieces, p => p.Role == "rim");
        Assert.Equal(Parse(strip), piece.Height);
        Assert.Equal(Parse(width) + In(0, 1, 2), piece.Width);
        Assert.Equal((4, CutGrain.Lengthwise), (piece.Count, piece.Grain));
    }

    /// <summary>
    /// [MVC]: a top of 32 1/2 × 44 in as cut takes verticals of 44 and, with 1 in all round, horizontals of 34 1/2; cut
    /// along the selvage they are 2 to 4 in longer (common practice, no source).
    /// </summary>
    [Fact]
    public void Lengthwise_strips_are_cut_two_to_four_inches_over()
    {
        var pieced = Bordered(In(32), In(43, 1, 2), new(In(1), "rim", BorderStyle.Butted, null, StripGrain.Lengthwise));

        Assert.Equal([In(34, 1, 2), In(44)], pieced.Sewing.Recipes.Where(r => r.Kind == "lengthwise-strip").Select(r => Length.Max(r.Width, r.Height)).Order());
        Assert.All(
            pieced.Pieces.Where(p => p.Role == "rim").OrderBy(p => p.Height).Zip([In(34, 1, 2), In(44)]),
            p => Assert.True(p.First.Height - p.Second >= In(2) && p.First.Height - p.Second <= In(4))
        );
    }

    /// <summary>
    /// [MDZ] prints 23 in for 250 in of 2 in bias, [RON] about 60 in of 2 in from 12 in and 100 from 15: areas, without
    /// the seams of band and tube and without counting whole strips. Own arithmetic with both: 23 1/8 in holds eight
    /// strips and reaches 250, 23 in holds seven and does not.
    /// </summary>
    [Fact]
    public void A_bias_square_counts_seams_and_whole_strips()
    {
        var (squares, side) = BiasSquare.Least(In(250), In(2), In(0, 1, 4), In(0, 1, 8), In(40));

        Assert.Equal((1, In(23, 1, 4)), (squares, side));
        Assert.Equal(8, BiasSquare.Rounds(side, In(2), In(0, 1, 4)));
        Assert.Equal(7, BiasSquare.Rounds(In(23), In(2), In(0, 1, 4)));
        Assert.True(BiasSquare.Long(In(23), In(2), In(0, 1, 4)) < (Surd)In(250));
        // The area, seams counted as [VA] does, is never exceeded.
        Assert.True(BiasSquare.Long(In(22), In(3), In(0, 1, 8)) <= (Surd)Length.Inches(new Rational(87 * 87, 16 * 3)));
    }

    /// <summary>More than one square where the cloth is too narrow for one, and a join more for each.</summary>
    [Fact]
    public void Long_bias_takes_several_squares()
    {
        var (squares, side) = BiasSquare.Least(In(700), In(2, 1, 2), In(0, 1, 4), In(0, 1, 8), In(40));

        Assert.Equal(2, squares);
        var each = BiasSquare.Long(side, In(2, 1, 2), In(0, 1, 4));
        Assert.True((each * 2) - (Surd)In(2, 1, 2) >= (Surd)In(700));
    }

    /// <summary>Sizes that [HBG], [PQP] and [EMB] agree on, and the smallest of [P12Q]; a quilt plus its margin picks one.</summary>
    [Theory]
    [InlineData("30", "44", "craft")]
    [InlineData("46", "60", "twin")]
    [InlineData("77", "99", "queen")]
    [InlineData("96", "80", "full")]
    [InlineData("109", "90", "king")]
    [InlineData("121", "90", null)]
    public void The_smallest_package_that_holds_the_batting_is_named(string width, string height, string? package) =>
        Assert.Equal(package, PackagedBattings.Need(Parse(width), Parse(height)).Package?.Name);

    /// <summary>[BELLA], [QB-BK]: split the second panel and put a half on each side, where the width allows the seam more.</summary>
    [Theory]
    [InlineData("60", true)]
    [InlineData("70 1/2", true)]
    [InlineData("70 5/8", false)]
    [InlineData("31", false)]
    public void A_seam_through_the_middle_is_avoided(string width, bool halved)
    {
        var backing = new Backing("backing", In(4), In(0, 1, 2), PanelSeams.Down);
        var plan = BackingPanels.Of(backing, Parse(width) - In(0, 1, 2), In(90), ClothTerms.Usual);

        Assert.Equal(halved, plan.HalvesOutside);
        Assert.Equal(halved ? 2 : plan.Panels - 1, plan.Seams);
    }

    private static Pieced Bordered(Length width, Length height, Border border)
    {
        var quilt = Sample.Quilt(1, "center", "rim") with
        {
            Blocks = [new("star", "Star", width, height, new(1, 1), [new("1", "center", [new(0, 0), new(width, 0), new(width, height), new(0, height)], [])])],
            Borders = [border],
        };
        var letters = new Letters([.. quilt.Roles.Select(r => ImmutableArray.Create(r.Id))]);
        var pieced = PiecingPlan.Of(quilt, Layout.Of(quilt), letters, ClothTerms.Usual with { UsableWidth = In(60) });
        Assert.Empty(pieced.Findings);
        return pieced.Value!;
    }
}
