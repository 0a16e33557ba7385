using CsCheck;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Kitwright.Settings;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>Blocks in columns or rows, dropped columns, rings round a center (own arithmetic).</summary>
public sealed class LinesTest
{
    private static Quilt Quilt(int columns, int rows)
    {
        var block = Samples.Of(
            "flag",
            Length.Inches(6),
            Length.Inches(4),
            new([new(0, 0), new(6, 0), new(6, 1)]),
            new([new(0, 0), new(6, 1), new(6, 4), new(0, 4)])
        );
        return Samples.Quilt([block], new(SettingKind.Straight, columns, rows, [[new("flag", 0, false)]], null));
    }

    [Theory]
    [InlineData(SashLines.Columns, 22, 16)]
    [InlineData(SashLines.Rows, 18, 22)]
    public void Strips_run_one_way_only(SashLines lines, int width, int height)
    {
        var design = Layout.Of(SettingChanges.Lined(Quilt(3, 4), Length.Inches(2), lines));
        Assert.Equal((Length.Inches(width), Length.Inches(height)), (design.Width, design.Height));
        Assert.Equal(lines == SashLines.Columns ? 2 : 3, design.Patches.Length);
        Assert.Empty(Partition.Check(Samples.WholeTop(design), ""));
    }

    [Fact]
    public void A_dropped_column_holds_one_block_less_and_fills_its_ends() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[2, 5], Gen.Bool)
            .Sample(
                (columns, rows, sashed) =>
                {
                    var laid = sashed ? SettingChanges.Lined(Quilt(columns, rows), Length.Inches(1), SashLines.Columns) : Quilt(columns, rows);
                    var dropped = SettingChanges.HalfDropped(laid);
                    Assert.DoesNotContain(QuiltRules.Check(dropped), f => f.Weight == Weight.Fault);
                    var design = Layout.Of(dropped);
                    Assert.Equal((columns * rows) - (columns / 2), design.Placements.Length);
                    Assert.Equal(Layout.Of(laid).Height, design.Height);
                    Assert.Empty(Partition.Check(Samples.WholeTop(design), ""));
                    Assert.Equal(QuiltFile.Write(dropped), QuiltFile.Write(QuiltFile.Read(QuiltFile.Write(dropped)).Value!));
                },
                iter: 30
            );

    [Theory]
    [MemberData(nameof(DemoQuiltTest.Files), MemberType = typeof(DemoQuiltTest))]
    public void Every_demo_quilt_becomes_rings_round_one_block(string file)
    {
        var ringed = SettingChanges.Ringed(QuiltFile.Read(Repository.Read("examples", "quilts", file)).Value!)!;
        Assert.DoesNotContain(QuiltRules.Check(ringed), f => f.Weight == Weight.Fault);
        var design = Layout.Of(ringed);
        Assert.Single(design.Placements, p => p.Id.Value.StartsWith("place/", StringComparison.Ordinal));
        Assert.Empty(Partition.Check(Samples.WholeTop(design), ""));
    }

    [Fact]
    public void Every_border_is_changed_by_itself()
    {
        var quilt = Quilt(3, 4) with { Borders = [new(Length.Inches(2), "dark", BorderStyle.Butted, null, StripGrain.Crosswise)] };
        quilt = BorderChanges.Added(quilt)!;
        var inner = BorderChanges.Cornered(quilt, 0, BorderStyle.Mitered)!;
        Assert.Equal([BorderStyle.Mitered, BorderStyle.Butted], inner.Borders.Select(b => b.Style));
        Assert.Equal(quilt.Borders[1], Assert.Single(BorderChanges.Dropped(inner, 0)!.Borders));
        var pieced = BorderChanges.Pieced(inner, 0, "flying-goose")!;
        Assert.NotNull(pieced.Borders[0].Units);
        Assert.Contains(pieced.Blocks, b => b.Id == "flying-goose");
        Assert.DoesNotContain(BorderChanges.Plain(pieced, 0)!.Blocks, b => b.Id == "flying-goose");
        Assert.Null(BorderChanges.Cornered(pieced, 0, BorderStyle.Mitered));
    }
}
