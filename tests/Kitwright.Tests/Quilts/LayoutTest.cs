using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Counts and sizes of layouts against published ones; ids of sources are those of docs/sources.md.</summary>
public sealed class LayoutTest
{
    private static Quilt Plain(int columns, int rows, Length block, Sashing? sashing, params ImmutableArray<Border> borders) =>
        Samples.Quilt(
            [Samples.Whole("plain", block, block)],
            new Setting(SettingKind.Straight, columns, rows, [[new("plain", 0, false)]], sashing),
            borders
        );

    private static Sashing Sash(Length width, bool outer = true) => new(width, "dark", "light", outer);

    private static ImmutableArray<Patch> Named(Design design, string start) =>
        [.. design.Patches.Where(p => p.Id.Value.StartsWith(start, StringComparison.Ordinal))];

    // [SIT] 4 × 5 blocks: 49 sashes, 30 posts. [APQ-CC] 5 × 7: 82 and 48. [KSS] 8 × 10: 178 and 99.
    // [ODD] inner sashing only, 4 × 4: 24 sashes (9 posts by arithmetic).
    [Theory]
    [InlineData(4, 5, true, 49, 30)]
    [InlineData(5, 7, true, 82, 48)]
    [InlineData(8, 10, true, 178, 99)]
    [InlineData(4, 4, false, 24, 9)]
    public void Counts_sashes_and_cornerstones(int columns, int rows, bool outer, int sashes, int posts)
    {
        var design = Layout.Of(Plain(columns, rows, Length.Inches(6), Sash(Length.Inches(2), outer)));
        Assert.Equal(sashes, Named(design, "frame/sash/").Length);
        Assert.Equal(posts, Named(design, "frame/post/").Length);
    }

    // [KSS] 80 six-inch blocks, 8 × 10, 2 in sashing all round: 66 × 82.
    [Fact]
    public void Sashed_quilt_has_its_published_size()
    {
        var design = Layout.Of(Plain(8, 10, Length.Inches(6), Sash(Length.Inches(2))));
        Assert.Equal((Length.Inches(66), Length.Inches(82)), (design.Width, design.Height));
    }

    // [APQ-CC] 10 in blocks 5 × 7, 1 in sashing all round, 6 in border: 68 1/2 × 90 1/2 unfinished, borders cut
    // 6 1/2 × 78 1/2 (sides) and 6 1/2 × 68 1/2 (top and bottom).
    [Fact]
    public void Log_cabin_with_butted_border_has_its_published_size()
    {
        var border = new Border(Length.Inches(6), "dark", BorderStyle.Butted, null, StripGrain.Lengthwise);
        var design = Layout.Of(Plain(5, 7, Length.Inches(10), Sash(Length.Inch), border));
        Assert.Equal((Length.Inches(68), Length.Inches(90)), (design.Width, design.Height));
        Assert.Equal((Length.Inches(6), Length.Inches(78)), Size(design, "frame/border/1/left"));
        Assert.Equal((Length.Inches(68), Length.Inches(6)), Size(design, "frame/border/1/top"));
    }

    // [MVC] W12: top 32 1/2 × 44 cut, so 32 × 43 1/2 finished; borders 1, 2 and 4, verticals first, the last with corner
    // squares: 44 / 34 1/2, 46 / 38 1/2, 50 / 38 1/2 cut, squares 4 1/2.
    [Fact]
    public void Border_chain_has_its_published_lengths()
    {
        var seams = Length.Inches(0, 1, 2);
        Border Butted(int width) => new(Length.Inches(width), "dark", BorderStyle.Butted, null, StripGrain.Crosswise);
        var design = Layout.Of(
            Samples.Quilt(
                [Samples.Whole("plain", Length.Inches(32), Length.Inches(43, 1, 2))],
                new Setting(SettingKind.Straight, 1, 1, [[new("plain", 0, false)]], null),
                Butted(1),
                Butted(2),
                new Border(Length.Inches(4), "dark", BorderStyle.CornerSquares, "light", StripGrain.Crosswise)
            )
        );
        Length[] sides = [Length.Inches(44), Length.Inches(46), Length.Inches(50)];
        Length[] tops = [Length.Inches(34, 1, 2), Length.Inches(38, 1, 2), Length.Inches(38, 1, 2)];
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(sides[i], Size(design, $"frame/border/{i + 1}/left").Height + seams);
            Assert.Equal(tops[i], Size(design, $"frame/border/{i + 1}/bottom").Width + seams);
        }

        var corners = Named(design, "frame/border/3/corner/");
        Assert.Equal(4, corners.Length);
        Assert.All(corners, c => Assert.Equal((Length.Inches(4), Length.Inches(4)), Size(c)));
    }

    // [APQ-MIT] a 40 in side with a 5 in border: the strip is 40 + 2 × 5 long before its allowance of 6.
    [Fact]
    public void Mitered_border_reaches_from_outer_corner_to_outer_corner()
    {
        var border = new Border(Length.Inches(5), "dark", BorderStyle.Mitered, null, StripGrain.Crosswise);
        var design = Layout.Of(Plain(4, 4, Length.Inches(10), null, border));
        Assert.Equal((Length.Inches(50), Length.Inches(5)), Size(design, "frame/border/1/top"));
        Assert.All(Named(design, "frame/border/1/"), p => Assert.Equal(4, p.Shape.Corners.Length));
    }

    // Derived: rows joined by sashes that run through have (rows + 1) of them and rows × (columns + 1) short ones.
    [Fact]
    public void Without_cornerstones_long_sashes_join_the_rows()
    {
        var design = Layout.Of(Plain(3, 2, Length.Inches(6), new Sashing(Length.Inches(2), "dark", null, true)));
        Assert.Equal(3, Named(design, "frame/sash/h/").Length);
        Assert.Equal(8, Named(design, "frame/sash/v/").Length);
        Assert.Equal((Length.Inches(26), Length.Inches(2)), Size(design, "frame/sash/h/1/1"));
    }

    [Fact]
    public void Row_one_is_the_upper_one_and_y_runs_up()
    {
        var design = Layout.Of(Plain(2, 3, Length.Inches(6), null));
        var first = design.Placements[0];
        Assert.Equal("place/r1/c1", first.Id.Value);
        Assert.Equal(new Point(0, 12), first.Motion.Apply(Point.Origin));
    }

    private static (Length Width, Length Height) Size(Design design, string id) =>
        Size(design.Patches.Single(p => p.Id.Value == id));

    private static (Length Width, Length Height) Size(Patch patch)
    {
        var (low, high) = patch.Shape.Bounds();
        return (Length.Inches((high.X - low.X).One), Length.Inches((high.Y - low.Y).One));
    }
}
