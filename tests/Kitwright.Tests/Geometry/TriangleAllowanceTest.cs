using System.Text.Json;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Geometry;

/// <summary>Why triangles are cut from squares 7/8 and 1 1/4 larger, from the geometry up.</summary>
public sealed class TriangleAllowanceTest
{
    private static readonly JsonElement Case = Cases.Open("triangle-allowances");

    /// <summary>
    /// The short side of a right-angled isosceles triangle of finished short side <paramref name="leg"/> after a seam is
    /// added to all three sides: the offset lines' corners, met exactly.
    /// </summary>
    private static Surd CutLeg(Surd leg, Surd seam)
    {
        // Sides x = 0, y = 0, x + y = leg move outward; the last by seam·√2 along the axes.
        var root2 = Surd.OfRoot2(1);
        Point corner = new(-seam, -seam),
            along = new(leg + (seam * root2) + seam, -seam);
        Assert.Equal(leg + (seam * root2), along.X + along.Y);
        return along.X - corner.X;
    }

    [Fact]
    public void The_exact_allowances_follow_from_offset_sides()
    {
        Surd seam = Case.Length("seam"),
            leg = 3;
        Assert.Equal(Case.GetProperty("halfSquare").Exact("exact"), CutLeg(leg, seam) - leg);
        // A quarter-square triangle lies on its long side: the square's side is the cut long side.
        Assert.Equal(Case.GetProperty("quarterSquare").Exact("exact"), (CutLeg(leg, seam) - leg) * Surd.OfRoot2(1));
    }

    // [KC], [GMG], [UKQU], [OTD], [NHQ], [SPQ]
    [Theory]
    [InlineData("halfSquare")]
    [InlineData("quarterSquare")]
    [InlineData("corner45")]
    public void The_published_allowances_are_the_exact_ones_rounded_up(string name)
    {
        var row = Case.GetProperty(name);
        Assert.Equal(row.Length("published"), row.Exact("exact").RoundUpTo(Case.Length("step")));
    }

    // [GMG], [OTD], [QMK]
    [Fact]
    public void Published_half_square_sizes_come_out() =>
        Assert.All(
            Case.GetProperty("halfSquares").EnumerateArray(),
            row =>
                Assert.Equal(
                    row.Length("cut"),
                    CutLeg(row.Length("finished"), Case.Length("seam")).RoundUpTo(Case.Length("step"))
                )
        );

    // Four at a time: two squares of side S sewn on all four edges and cut on both diagonals give units of
    // (S − 1/2) / √2 (own arithmetic). [MQF2] says "a little larger than 2 1/2" for S = 4; it is a little smaller.
    [Fact]
    public void Four_at_a_time_from_four_inches_falls_short_of_two_and_a_half()
    {
        Surd unit = (4 - new Rational(1, 2)) / Surd.OfRoot2(1);
        Assert.True(unit < new Rational(5, 2));
        Assert.Equal(Length.Inches(2, 1, 2), unit.RoundUpTo(Case.Length("step")));
    }

    // [TILK]: 3.5 s and 5 s, for any seam.
    [Fact]
    public void The_published_rule_for_any_seam_is_never_too_small() =>
        Gen.Int[1, 64]
            .Sample(ticks =>
            {
                var rule = Case.GetProperty("anySeam");
                Surd seam = Length.Ticks(ticks * 40);
                var exact = CutLeg(1, seam) - 1;
                Assert.True(seam * rule.Number("halfSquare") > exact);
                Assert.True(seam * rule.Number("quarterSquare") > exact * Surd.OfRoot2(1));
            });
}
