using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Cutting;

/// <summary>Strip counts and yardages of published patterns, one fabric each; sources by id in the list of sources.</summary>
public sealed class StripCountTest
{
    /// <summary>The count of strips and their sum of heights in inches that the source gives or implies.</summary>
    [Theory]
    // [KSS] W3: 178 sashes from 30 strips of 2 1/2 in, 6 to a strip; 99 posts from 7 strips.
    [InlineData("40", "2 1/2 x 6 1/2", 178, 30, "75")]
    [InlineData("40", "6 1/2 x 2 1/2", 178, 30, "75")]
    [InlineData("40", "2 1/2 x 2 1/2", 99, 7, "17 1/2")]
    // [BOB] Y1: 300 rectangles of 3 by 2 in, 13 across, 24 rows, 48 in.
    [InlineData("40", "3 x 2", 300, 24, "48")]
    // [QB-63] Y3: 63 squares of 9 1/2 in, 4 to a strip, 16 strips, 152 in (4 of them are 38 in; 37 is a misprint).
    [InlineData("42", "9 1/2 x 9 1/2", 63, 16, "152")]
    // [MQF] Y5: a fat quarter, 18 in across, gives 16 squares of 4 1/2 in or 56 of 2 1/2 in within its 21 in.
    [InlineData("18", "4 1/2 x 4 1/2", 16, 4, "18")]
    [InlineData("18", "2 1/2 x 2 1/2", 56, 8, "20")]
    // [QA] Y14: 132 rectangles of 2 by 5 in at 8 to a strip are 17 strips.
    [InlineData("40", "5 x 2", 132, 17, "34")]
    // [PWT1] W8: 12 squares of 4 1/2 in, 2 strips; 144 squares of 2 1/2 in, 9 strips (derived).
    [InlineData("40", "4 1/2 x 4 1/2", 12, 2, "9")]
    [InlineData("40", "2 1/2 x 2 1/2", 144, 9, "22 1/2")]
    // [QC-SQ2] W9: 112 pieces of 3 7/8 by 7 3/4 in at 5 to a strip of 42 in, 23 strips (derived).
    [InlineData("42", "7 3/4 x 3 7/8", 112, 23, "89 1/8")]
    public void Strips_of_one_size(string width, string size, int count, int strips, string inches)
    {
        // The source lays all pieces one way; turning is tried below.
        var sides = size.Split(" x ");
        var longSideAlong = Cloth.Read(sides[0]) < Cloth.Read(sides[1]) ? $"{sides[1]} x {sides[0]}" : size;
        var plan = Planned(Cloth.Of(width, (longSideAlong, count)));
        Assert.Equal(strips, plan.Figures.Strips);
        Assert.Equal(Cloth.Read(inches), plan.Cut);
    }

    /// <summary>[PWT1] W8, fixture ORIENT: 48 of 2 1/2 by 4 1/2 in are 15 in one way and 13 1/2 in the other.</summary>
    [Fact]
    public void Turning_rectangles_takes_thirteen_and_a_half_inches_rather_than_fifteen()
    {
        Assert.Equal(Length.Inches(15), Planned(Cloth.Of("40", ("4 1/2 x 2 1/2", 48))).Cut);
        Assert.Equal(Length.Inches(13, 1, 2), Planned(Cloth.Of("40", ("2 1/2 x 4 1/2", 48))).Cut);
        Assert.Equal(Length.Inches(13, 1, 2), Planned(Cloth.Of("40", ("4 1/2 x 2 1/2 turn", 48))).Cut);
    }

    /// <summary>[QB-52] Y7: 52 squares of 4 in and 20 of 3 in from 44 in: 5 + 2 strips, 26 in, within 3/4 yd.</summary>
    [Fact]
    public void Two_sizes_of_squares_fit_three_quarters_of_a_yard()
    {
        var problem = Cloth.Of("44", ("4 x 4", 52), ("3 x 3", 20));
        Assert.Equal(Length.Inches(26), HandbookWay.Plan(problem).Value!.Cut);
        var plan = Planned(problem);
        Assert.True(plan.Cut <= Length.Inches(26));
        Assert.True(plan.Purchase <= Cloth.Read("3/4 yd"));
    }

    /// <summary>[WK] Y9: 12 of 9 1/2 in and 4 of 18 1/2 in from 5 in strips of 40 in: 5 whole strips, not 188/40.</summary>
    [Fact]
    public void Whole_pieces_are_never_pieced_from_strip_ends()
    {
        var plan = Planned(Cloth.Of("40", ("9 1/2 x 5", 12), ("18 1/2 x 5", 4)));
        Assert.Equal(5, plan.Figures.Strips);
        Assert.Equal(Length.Inches(25), plan.Cut);
    }

    /// <summary>Binding: strips as long as the cloth is wide. [MCD] B1, [SYL-B] B3, [QB-BM] B6, fixture BIND.</summary>
    [Theory]
    [InlineData("42", "54", "60", "10", "2 1/4", 6, "13 1/2")]
    [InlineData("40", "46", "46", "0", "2 1/2", 5, "12 1/2")]
    [InlineData("40", "96", "110", "12", "2 1/2", 11, "27 1/2")]
    [InlineData("42", "68 1/2", "90 1/2", "10", "2 1/2", 8, "20")]
    public void Binding_strips(string width, string across, string down, string extra, string strip, int strips, string inches)
    {
        var wanted = ((Cloth.Read(across) + Cloth.Read(down)) * 2) + Cloth.Read(extra);
        var count = (int)(wanted / Cloth.Read(width)).Ceiling();
        var plan = Planned(Cloth.Of(width, ($"{width} x {strip}", count)));
        Assert.Equal(strips, plan.Figures.Strips);
        Assert.Equal(strips, plan.Figures.SubCuts);
        Assert.Equal(Cloth.Read(inches), plan.Cut);
    }

    /// <summary>[QB-BM] B6, fixture BIND_EDGE: 11 strips of 2 1/2 in do not come out of 3/4 yd, as was printed.</summary>
    [Fact]
    public void Eleven_binding_strips_need_more_than_three_quarters_of_a_yard() =>
        Assert.Equal(Cloth.Read("7/8 yd"), Planned(Cloth.Of("40", ("40 x 2 1/2", 11))).Purchase);

    /// <summary>Exact fit: 4 of 10 1/2 in are 42 in. [APQ-CC] W1 and [ODD] W11 read it both ways; a trim decides.</summary>
    [Fact]
    public void Four_of_ten_and_a_half_inches_come_out_of_42_only_without_a_cross_trim()
    {
        var exact = Cloth.Terms("42");
        Assert.Equal(6, Planned(Cloth.Of(exact, ("10 1/2 x 3", 24))).Figures.Strips);
        var trimmed = exact with { CrossTrim = Length.Inches(0, 1, 2) };
        Assert.Equal(8, Planned(Cloth.Of(trimmed, ("10 1/2 x 3", 24))).Figures.Strips);
        // [APQ-CC] W1: 82 sashes of 1 1/2 by 10 1/2 in: 31 1/2 in, or 42 in on the cautious reading.
        Assert.Equal(Length.Inches(31, 1, 2), Planned(Cloth.Of(exact, ("10 1/2 x 1 1/2", 82))).Cut);
        Assert.Equal(Length.Inches(42), Planned(Cloth.Of(trimmed, ("10 1/2 x 1 1/2", 82))).Cut);
    }

    /// <summary>40 in holds 16 squares of 2 1/2 in exactly: common practice, no source.</summary>
    [Fact]
    public void Sixteen_squares_of_two_and_a_half_inches_come_out_of_40() =>
        Assert.Equal(1, Planned(Cloth.Of("40", ("2 1/2 x 2 1/2", 16))).Figures.Strips);

    private static ClothPlan Planned(ClothProblem problem)
    {
        var plan = FirstFit.Plan(problem);
        Assert.True(plan.Good);
        Assert.Empty(PlanAudit.Of(plan.Value!));
        return plan.Value!;
    }
}
