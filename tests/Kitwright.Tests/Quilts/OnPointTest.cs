using System.Collections.Immutable;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class OnPointTest
{
    private static Quilt OnPoint(int columns, int rows, Length side) =>
        Samples.Quilt(
            [Samples.Whole("plain", side, side)],
            new Setting(SettingKind.OnPoint, columns, rows, [[new("plain", 1, false)]], null, "dark")
        );

    private static int Count(Design design, params ReadOnlySpan<string> sides)
    {
        var count = 0;
        foreach (var side in sides)
        {
            count += design.Patches.Count(p => p.Id.Value.StartsWith($"frame/setting/{side}/", StringComparison.Ordinal));
        }

        return count;
    }

    // [SCRAPB] 4 × 5 on point: 32 blocks, 14 side triangles, 4 corners. [APQS] C4: 32 blocks too. 4 × 4 by the same
    // formulas, R·C + (R − 1)(C − 1) and 2(R + C − 2): own, agree with three published patterns.
    [Theory]
    [InlineData(4, 5, 32, 14)]
    [InlineData(4, 4, 25, 12)]
    [InlineData(1, 1, 1, 0)]
    [InlineData(1, 3, 3, 4)]
    public void Counts_blocks_and_triangles(int columns, int rows, int blocks, int triangles)
    {
        var design = Layout.Of(OnPoint(columns, rows, Length.Inches(6)));
        Assert.Equal(blocks, design.Placements.Length);
        Assert.Equal(triangles, Count(design, "top", "bottom", "left", "right"));
        Assert.Equal(4, Count(design, "corner"));
    }

    // Derived: a top is C·s√2 by R·s√2; up to the next 1/8 in here. 4 × 8.4853 = 33.94, 5 × 8.4853 = 42.43.
    [Fact]
    public void Size_is_that_of_the_points_up_to_the_ruler_step()
    {
        var design = Layout.Of(OnPoint(4, 5, Length.Inches(6)));
        Assert.Equal((Length.Inches(34), Length.Inches(42, 1, 2)), (design.Width, design.Height));
    }

    [Fact]
    public void Points_stay_off_the_edge_by_less_than_half_a_ruler_step()
    {
        var design = Layout.Of(OnPoint(4, 5, Length.Inches(6)));
        var lowest = design.Placements.SelectMany(p => Corners(p, 6)).Min(c => c.Y);
        Assert.True(lowest.Sign > 0 && lowest < new Rational(1, 16));
    }

    [Fact]
    public void Blocks_and_triangles_fill_the_top_exactly() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4], Gen.Int[16, 200])
            .Sample(
                (columns, rows, sixteenths) =>
                {
                    var quilt = OnPoint(columns, rows, Length.Inches(new Rational(sixteenths, 16)));
                    Assert.Empty(Partition.Check(Samples.WholeTop(Layout.Of(quilt)), ""));
                },
                iter: 40
            );

    private static IEnumerable<Point> Corners(Placement placement, int side) =>
        Polygon.Rectangle(0, 0, side, side).Corners.Select(placement.Motion.Apply);
}
