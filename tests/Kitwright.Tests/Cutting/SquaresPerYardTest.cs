using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Cutting;

/// <summary>
/// Published charts of how many squares come out of a length, asked the other way round: n squares must fit the
/// length, and one more must not. One size of square is the case in which first fit is least and proves it.
/// </summary>
public sealed class SquaresPerYardTest
{
    /// <summary>
    /// [QC-MC] Math charts (M. Hohn, quilterscache.com, 17 June 2002): 44 in usable, 36 in, no straightening.
    /// </summary>
    [Theory]
    [InlineData("1", 1584)]
    [InlineData("1 1/2", 696)]
    [InlineData("1 7/8", 437)]
    [InlineData("2", 396)]
    [InlineData("2 1/2", 238)]
    [InlineData("2 7/8", 180)]
    [InlineData("3", 168)]
    [InlineData("3 1/2", 120)]
    [InlineData("3 7/8", 99)]
    [InlineData("4", 99)]
    [InlineData("4 1/2", 72)]
    [InlineData("4 7/8", 63)]
    [InlineData("5", 56)]
    [InlineData("5 1/2", 48)]
    [InlineData("5 7/8", 42)]
    [InlineData("6", 42)]
    [InlineData("6 1/2", 30)]
    [InlineData("6 7/8", 30)]
    [InlineData("7 1/2", 20)]
    [InlineData("7 7/8", 20)]
    [InlineData("8", 20)]
    [InlineData("8 1/2", 20)]
    [InlineData("8 7/8", 16)]
    [InlineData("9", 16)]
    [InlineData("9 1/2", 12)]
    [InlineData("9 7/8", 12)]
    [InlineData("10", 12)]
    [InlineData("10 1/2", 12)]
    [InlineData("10 7/8", 12)]
    [InlineData("11", 12)]
    [InlineData("11 1/2", 9)]
    [InlineData("11 7/8", 9)]
    [InlineData("12", 9)]
    [InlineData("12 1/2", 6)]
    [InlineData("12 7/8", 6)]
    public void Squares_from_a_yard(string side, int count)
    {
        Assert.True(Takes("44", "0", side, count) <= Length.Yard);
        Assert.True(Takes("44", "0", side, count + 1) > Length.Yard);
    }

    [Fact]
    public void The_charts_35_squares_of_7_in_are_a_misprint()
    {
        Assert.True(Takes("44", "0", "7", 35) > Length.Yard);
        Assert.True(Takes("44", "0", "7", 30) <= Length.Yard);
    }

    private static readonly string[] PartYards = ["1/8", "1/4", "1/3", "3/8", "1/2", "5/8", "2/3", "3/4", "7/8", "1"];

    /// <summary>
    /// [SYL-Y] Yardage for cutting squares (sylviasquiltdepot.com): "washed, 44 in fabric". Rows of 1 to 6 1/2 in equal
    /// a usable width of 43 1/2 in and a straightening loss of 1/4 in (our derivation); misprints apart.
    /// </summary>
    [Theory]
    [InlineData("1", "172 344 473 559 731 946 989 1118 1333 1505")]
    [InlineData("1 1/2", "58 145 203 232 - 406 435 493 580 667")]
    [InlineData("2", "42 84 105 126 168 231 231 273 315 -")]
    [InlineData("2 1/2", "17 51 68 85 119 136 153 170 204 238")]
    [InlineData("3", "14 28 42 56 70 98 98 112 140 154")]
    [InlineData("3 1/2", "12 24 36 36 60 72 72 84 96 120")]
    [InlineData("4", "10 20 20 30 40 50 50 60 70 80")]
    [InlineData("4 1/2", "0 9 18 18 27 36 45 45 54 63")]
    [InlineData("5", "0 8 16 16 24 32 32 40 48 56")]
    [InlineData("5 1/2", "0 7 14 14 21 28 28 28 35 42")]
    [InlineData("6", "0 7 7 14 14 21 21 28 35 35")]
    [InlineData("6 1/2", "0 6 6 12 12 18 18 24 24 30")]
    public void Squares_from_part_yards_with_straightening(string side, string row)
    {
        foreach (var (part, printed) in PartYards.Zip(row.Split(' ')).Where(cell => cell.Second != "-"))
        {
            var count = int.Parse(printed, System.Globalization.CultureInfo.InvariantCulture);
            var length = Cloth.Read(part + " yd");
            Assert.True(count == 0 || Takes("43 1/2", "1/4", side, count) <= length, $"{side} in from {part} yd");
            Assert.True(Takes("43 1/2", "1/4", side, count + 1) > length, $"{side} in from {part} yd");
        }
    }

    /// <summary>[SYL-Y] prints 219 squares of 1 1/2 in from half a yard, and 351 of 2 in from a yard.</summary>
    [Theory]
    [InlineData("1 1/2", "1/2 yd", 219, 319)]
    [InlineData("2", "1 yd", 351, 357)]
    public void The_tables_two_misprints_are_refused(string side, string length, int printed, int right)
    {
        Assert.True(Takes("43 1/2", "1/4", side, printed + 1) <= Cloth.Read(length));
        Assert.True(Takes("43 1/2", "1/4", side, right) <= Cloth.Read(length));
        Assert.True(Takes("43 1/2", "1/4", side, right + 1) > Cloth.Read(length));
    }

    private static Length Takes(string width, string straightening, string side, int count)
    {
        var plan = FirstFit.Plan(Cloth.Of(Cloth.Terms(width, straightening), ($"{side} x {side}", count))).Value!;
        Assert.Empty(PlanAudit.Of(plan));
        Assert.Equal(ProofStatus.Proved, plan.Proof.Status);
        return plan.Cut;
    }
}
