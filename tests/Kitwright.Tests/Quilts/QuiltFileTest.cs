using CsCheck;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class QuiltFileTest
{
    private static readonly string Demo = Repository.Read("examples", "quilts", "ostrel-bay-stars.json");

    // Reading what was written gives a quilt that is written the same; records hold arrays, so text is compared.
    [Fact]
    public void Write_and_read_are_inverse() =>
        Gen.Select(CutBlocks.InAFile, Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[1, 60], Gen.Enum<BorderStyle>(), Gen.Bool)
            .Sample(
                (block, columns, rows, sixteenths, style, centimeters) =>
                {
                    var corner = style == BorderStyle.CornerSquares ? "light" : null;
                    var width = Length.Inches(new Rational(sixteenths, 16));
                    var quilt = Samples.Quilt(
                        [block],
                        new Setting(
                            SettingKind.Straight,
                            columns,
                            rows,
                            [[new(block.Id, 0, false), new(block.Id, 3, true)]],
                            new(width, "dark", "light", true)
                        ),
                        new Border(width, "dark", style, corner, StripGrain.Lengthwise)
                    ) with
                    {
                        Units = centimeters ? LengthUnit.Centimeter : LengthUnit.Inch,
                        Note = "“√2”, 3 7/8, \\ and \"",
                        Licensed = new("Somebody else", true, false, true, false, true),
                    };
                    var text = QuiltFile.Write(quilt);
                    var read = QuiltFile.Read(text);
                    Assert.Empty(read.Findings);
                    Assert.Equal(text, QuiltFile.Write(read.Value!));
                    Assert.Equal(block.Patches[0].Corners, read.Value!.Blocks[0].Patches[0].Corners);
                    Assert.Equal(width, read.Value.Borders[0].Width);
                },
                iter: 100
            );

    [Fact]
    public void Any_text_is_read_without_throwing() =>
        Gen.String[0, 200].Sample(
            text => Assert.False(QuiltFile.Read(text).Good), iter: 500);

    // One character of a good file lost, doubled or changed: still a quilt, or findings with a place.
    [Fact]
    public void A_damaged_file_is_a_quilt_or_findings() =>
        Gen.Select(Gen.Int[0, Demo.Length - 1], Gen.Int[0, 2], Gen.Char["\"{],09-x√\u0000\ud800"])
            .Sample(
                (at, how, with) =>
                {
                    var text = how switch
                    {
                        0 => Demo.Remove(at, 1),
                        1 => Demo.Insert(at, with.ToString()),
                        _ => Demo.Remove(at, 1).Insert(at, with.ToString()),
                    };
                    var read = QuiltFile.Read(text);
                    Assert.True(read.Good || read.Findings.Any(f => f.Weight == Weight.Fault));
                },
                iter: 200
            );

    [Fact]
    public void Byte_order_mark_is_no_fault() => Assert.True(QuiltFile.Read("\uFEFF" + Demo).Good);

    [Theory]
    [InlineData("ö")]
    [InlineData("√√")]
    [InlineData("𝔮")]
    public void Column_counts_characters_and_not_bytes(string name)
    {
        var read = QuiltFile.Read($$"""{ "name": "{{name}}" x }""");
        Assert.Equal((long)new System.Globalization.StringInfo(name).LengthInTextElements + 14, Convert.ToInt64(read.Findings[0].Reason.Slots["column"]));
    }

    [Fact]
    public void Centimeters_are_exact()
    {
        var text = Demo.Replace("\"units\": \"inch\"", "\"units\": \"centimeter\"", StringComparison.Ordinal).Replace(" in\"", " cm\"", StringComparison.Ordinal);
        var design = Layout.Of(QuiltFile.Read(text).Value!);
        Assert.Equal(Length.Millimeters(830), design.Width);
    }

    [Fact]
    public void Mirrored_block_is_a_block_of_its_own()
    {
        var half = Samples.Of(
            "half",
            Length.Inches(6),
            Length.Inches(6),
            new Polygon([new(0, 0), new(6, 0), new(6, 6)]),
            new Polygon([new(0, 0), new(6, 6), new(0, 6)])
        );
        var design = Layout.Of(
            Samples.Quilt([half], new Setting(SettingKind.Straight, 2, 1, [[new("half", 0, false), new("half", 0, true)]], null))
        );
        Assert.Equal(["half", "half.mirror"], design.Blocks.Select(b => b.Id));
        Assert.All(design.Placements, p => Assert.False(p.Motion.Mirrors));
        Assert.Equal("block/half.mirror/patch/1", design.Blocks[1].Patches[0].Id.Value);
        Assert.Contains(new Point(0, 6), design.Blocks[1].Patches[0].Shape.Corners);
    }
}
