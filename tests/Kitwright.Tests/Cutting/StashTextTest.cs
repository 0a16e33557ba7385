using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Cutting;

/// <summary>Cloth as a quilter writes it down; a fat quarter is 18 by 22 in [QC-MC].</summary>
public sealed class StashTextTest
{
    private static readonly Length Usual = Length.Inches(40);

    [Theory]
    [InlineData("3 fat quarters", 3, "fat quarters", "22", "18")]
    [InlineData("fat eighth", 1, "fat eighth", "22", "9")]
    [InlineData("2 Fat Eighths", 2, "Fat Eighths", "22", "9")]
    [InlineData("blue: 1 1/2 yd of 42", 1, "blue", "42", "54")]
    [InlineData("blue: 1.5 m of 110 cm", 1, "blue", "43 39/127", "59 7/127")]
    [InlineData("1/2 yd", 1, "1/2 yd", "40", "18")]
    [InlineData("2 yards 44 wide", 1, "2 yards 44 wide", "44", "72")]
    [InlineData("20 squares 5", 20, "squares 5", "5", "5")]
    [InlineData("42 squares of 10 in", 42, "squares of 10 in", "10", "10")]
    [InlineData("12 strips 2 1/2 x 42", 12, "strips 2 1/2 x 42", "42", "2 1/2")]
    [InlineData("40 strips 2½", 40, "strips 2½", "40", "2 1/2")]
    [InlineData("4 of 18 x 21", 4, "18 x 21", "21", "18")]
    [InlineData("A: 9 × 22 1/4", 1, "A", "22 1/4", "9")]
    [InlineData("50 cm x 1 in", 1, "50 cm x 1 in", "1", "19 87/127")]
    public void Cloth_as_it_is_written_down(string line, int count, string label, string width, string height)
    {
        var sheet = Assert.Single(StashText.Read(line, Usual).Value!.Sheets);

        Assert.Equal((count, label, width, height), (sheet.Count, sheet.Label, LengthText.Inches(sheet.Width), LengthText.Inches(sheet.Height!.Value)));
    }

    [Theory]
    [InlineData("4 of 45 x 110", "1100", "450")]
    [InlineData("20 squares 12,5", null, null)]
    [InlineData("20 squares 12.5", "125", "125")]
    [InlineData("1.5 m of 110", "1100", "1500")]
    [InlineData("12 strips 6", "1016", "60")]
    [InlineData("5 x 7 in", "177 4/5", "50")]
    public void In_a_metric_shop_sizes_without_a_unit_are_centimeters(string line, string? width, string? height)
    {
        var sheet = StashText.Read(line, Usual, LengthUnit.Centimeter).Value?.Sheets.Single();

        Assert.Equal((width, height), (sheet is null ? null : LengthText.Mixed(sheet.Width.InMillimeters), sheet is null ? null : LengthText.Mixed(sheet.Height!.Value.InMillimeters)));
    }

    [Theory]
    [InlineData("a lot of it")]
    [InlineData("0 fat quarters")]
    [InlineData("squares")]
    [InlineData("18 x")]
    [InlineData("9999999 squares 5")]
    [InlineData("1/0 yd")]
    [InlineData("200 yd")]
    public void What_cannot_be_read_is_named_by_its_line(string line)
    {
        var read = StashText.Read("fat quarter\n" + line, Usual);

        Assert.Equal(("stash.line", "line 2"), (read.Findings.Single().Rule, read.Findings.Single().Place));
        Assert.Single(read.Value!.Sheets);
    }

    [Fact]
    public void Hostile_text_is_answered_at_once()
    {
        Assert.Equal("stash.too-long", StashText.Read(new string('1', 30_000), Usual).Findings.Single().Rule);
        var spaces = StashText.Read("1" + new string(' ', 9_000) + "x", Usual);
        Assert.Equal("stash.line", spaces.Findings.Single().Rule);
    }

    [Fact]
    public void A_line_that_is_written_is_read_back()
    {
        var line = StashText.Line(Length.Inches(14), Length.Inches(2, 1, 2), 3);
        var sheet = StashText.Read(line, Usual).Value!.Sheets.Single();

        Assert.Equal((3, Length.Inches(14), Length.Inches(2, 1, 2)), (sheet.Count!.Value, sheet.Width, sheet.Height!.Value));
        // 2 1/2 in = 63.5 mm: no more is told than there is.
        Assert.Equal("3 of 6.3 cm x 35.5 cm", StashText.Line(Length.Inches(14), Length.Inches(2, 1, 2), 3, LengthUnit.Centimeter));
    }
}
