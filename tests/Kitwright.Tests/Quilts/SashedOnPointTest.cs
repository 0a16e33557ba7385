using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class SashedOnPointTest
{
    private static Quilt Sashed(int columns, int rows, Length side, Sashing sashing) =>
        Samples.Quilt(
            [Samples.Whole("plain", side, side)],
            new Setting(SettingKind.OnPoint, columns, rows, [[new("plain", 1, false)]], sashing, "dark")
        );

    private static int Count(Design design, string start) => design.Patches.Count(p => p.Id.Value.StartsWith(start, StringComparison.Ordinal));

    private static readonly Gen<Sashing> AnySashing =
        from eighths in Gen.Int[2, 40]
        from posts in Gen.Bool
        from outer in Gen.Bool
        from halved in Gen.Bool
        select new Sashing(Length.Inches(new Rational(eighths, 8)), "light", posts ? "dark" : null, outer, outer && halved);

    [Fact]
    public void Blocks_sashes_and_edges_fill_the_top_exactly() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4], Gen.Int[16, 200], AnySashing)
            .Sample(
                (columns, rows, sixteenths, sashing) =>
                {
                    var quilt = Sashed(columns, rows, Length.Inches(new Rational(sixteenths, 16)), sashing);
                    Assert.Empty(QuiltRules.Check(quilt));
                    var design = Layout.Of(quilt);
                    Assert.Equal((columns * rows) + ((columns - 1) * (rows - 1)), design.Placements.Length);
                    Assert.Equal(design.Patches.Length, design.Patches.DistinctBy(p => p.Id).Count());
                    Assert.Empty(Partition.Check(Samples.WholeTop(design), ""));
                },
                iter: 60
            );

    // Own arithmetic. 3 × 3 on point is 13 blocks; each has four sashes, and two blocks share one where they are
    // neighbors along a diagonal row or across: 13·4 less 16 shared. Cornerstones stand at every corner of a block: the
    // lattice points about 13 cells of a diamond number 4 + 8 + 12 = 24; 12 of them lie inside, the others on the edge.
    [Theory]
    [InlineData(true, false, 36, 24)]
    [InlineData(true, true, 36, 12)]
    [InlineData(false, false, 16, 4)]
    public void Counts_sashes_and_cornerstones(bool outer, bool halved, int sashes, int posts)
    {
        var design = Layout.Of(Sashed(3, 3, Length.Inches(6), new(Length.Inch, "light", "dark", outer, halved)));
        Assert.Equal(13, design.Placements.Length);
        Assert.Equal(sashes, Count(design, "frame/sash/"));
        Assert.Equal(posts, Count(design, "frame/post/"));
    }

    // Own arithmetic: along a diagonal lie 3 blocks of 6 in with 2 sashes of 1 in between; with sashing all round, 4 sashes,
    // or 3 where the edge halves the outermost. Times √2: 28.28, 31.11, 29.70; up to the next 1/8 in.
    [Theory]
    [InlineData(false, false, 28, 3)]
    [InlineData(true, false, 31, 1)]
    [InlineData(true, true, 29, 6)]
    public void Has_the_size_of_its_diagonals(bool outer, bool halved, int inches, int eighths)
    {
        var design = Layout.Of(Sashed(3, 3, Length.Inches(6), new(Length.Inch, "light", "dark", outer, halved)));
        Assert.Equal(Length.Inches(inches, eighths, 8), design.Width);
    }

    [Fact]
    public void Every_seam_between_rows_runs_straight_to_the_edge()
    {
        var design = Layout.Of(Sashed(4, 3, Length.Inches(6), new(Length.Inch, "light", "dark", true, true)));
        // Each patch and block lies between two neighboring row lines of x − y.
        var shapes = design
            .Patches.Select(p => p.Shape)
            .Concat(design.Placements.Select(p => Polygon.Rectangle(0, 0, 6, 6).Moved(p.Motion)))
            .Select(shape => (Low: shape.Corners.Min(c => c.X - c.Y), High: shape.Corners.Max(c => c.X - c.Y)))
            .Distinct()
            .OrderBy(span => span.Low)
            .ToList();
        Assert.All(shapes.Zip(shapes.Skip(1)), pair => Assert.Equal(pair.First.High, pair.Second.Low));
    }
}
