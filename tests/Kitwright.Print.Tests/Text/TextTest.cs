using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Fonts;
using Kitwright.Print.Text;
using Kitwright.Words;

namespace Kitwright.Print.Tests.Text;

public sealed class TextTest
{
    private static readonly TextStyle Ten = new(Face.Regular, 10, 14, new(0, 0, 0));

    public static TheoryData<string> Faces => [.. Face.All.Take(2).Select(face => face.Name)];

    // A missing glyph prints as an empty box, without an error.
    [Theory, MemberData(nameof(Faces))]
    public void EveryCharacterOfEveryTemplateHasAGlyph(string name)
    {
        var face = Face.All.Single(f => f.Name == name);
        var words = Catalog.English.Keys.SelectMany(key => TextsOf(key)).Concat("0123456789 /⁄×·–…’‘“”°%½¼¾⅛⅜⅝⅞⅓⅔→←↑↓\u00A0");
        Assert.All(words.Distinct().Where(c => c != '\n'), c => Assert.True(face.For(c).File.Glyph(c) != 0, $"U+{(int)c:X4} {c}"));
    }

    // The file itself, so that branches which no test says are covered too.
    private static IEnumerable<char> TextsOf(string key)
    {
        Assert.True(Catalog.English.Has(key));
        return AllTemplates.Value;
    }

    private static readonly Lazy<string> AllTemplates = new(() =>
        string.Concat(Directory.GetFiles(Path.Combine(Demo.Root, "src", "Kitwright", "Words"), "en.*.json").Select(File.ReadAllText))
    );

    [Fact]
    public void ALetterThatOurFaceLacksComesFromTheFallback()
    {
        // U+2702, scissors: Inter has none.
        var text = SetText.Of("a✂b", Ten);
        Assert.Equal(["Inter-Regular", "DejaVuSans", "Inter-Regular"], text.Spans.Select(span => span.Face.Name));
        Assert.All(text.Spans.SelectMany(span => span.Glyphs), glyph => Assert.NotEqual(0, glyph.Glyph));
    }

    [Theory]
    [InlineData("3 7/8 in", "7/", "8")]
    [InlineData("11/16", "11/", "16")]
    public void AFractionIsSetInSmallFiguresAndReadsAsItWas(string text, string over, string under)
    {
        var set = SetText.Of(text, Ten);
        Assert.Equal(text, string.Concat(set.Spans.Select(span => span.Text)));
        Assert.Equal(over, set.Spans.Single(span => span.Feature == "numr").Text);
        Assert.Equal(under, set.Spans.Single(span => span.Feature == "dnom").Text);
        var plain = text.Sum(c => Face.Regular.File.Advance(Face.Regular.File.Glyph(c))) * 10;
        Assert.True(set.Width < plain, $"{set.Width} {plain}");
    }

    [Fact]
    public void LabelsAndDecimalsAreNoFractions()
    {
        Assert.DoesNotContain(SetText.Of("A1/2 1.1/2 and/or", Ten).Spans, span => span.IsFraction);
    }

    [Fact]
    public void TabularFiguresAreEquallyWide()
    {
        var tabular = Ten with { Tabular = true };
        Assert.Equal(SetText.Of("111", tabular).Width, SetText.Of("888", tabular).Width, 6);
        Assert.NotEqual(SetText.Of("111", Ten).Width, SetText.Of("888", Ten).Width, 1);
    }

    [Fact]
    public void TheWidthIsTheSumOfTheAdvancesOfTheFontFile()
    {
        // Inter Regular, units per em and advances of A and V read from the file: no kerning is applied.
        var expected = (Face.Regular.File.Advance(Face.Regular.File.Glyph('A')) + Face.Regular.File.Advance(Face.Regular.File.Glyph('V'))) * 10;
        Assert.Equal(expected, SetText.Of("AV", Ten).Width, 6);
    }

    private static string[] Lines(string text, double width) =>
        ((Whole)Paragraph.Of(text, Ten).Lay(new(width, 1000))).Drawing is Group group
            ? [.. group.Nodes.Cast<TextLine>().GroupBy(line => line.Start.Y).Select(line => string.Concat(line.Select(l => l.Text.Text)))]
            : [];

    [Fact]
    public void LinesBreakAtSpacesAndNeverWithinAMeasure()
    {
        for (var width = 60; width < 300; width++)
        {
            var lines = Lines("Cut 11 strips 2 1/8 in × WOF; sub-cut into 60 of 2 1/8 × 5 3/8 (B3).", width);
            Assert.Equal("Cut 11 strips 2 1/8 in × WOF; sub-cut into 60 of 2 1/8 × 5 3/8 (B3).", string.Join(' ', lines));
            Assert.All(lines, line => Assert.DoesNotMatch(@"(^| )\d+$.*|^in\b|^×|×$|^\d+/", line.EndsWith("60", StringComparison.Ordinal) || line.EndsWith("11", StringComparison.Ordinal) ? "" : line));
        }
    }

    [Fact]
    public void NoLineIsWiderThanItsSpaceUnlessItIsOneWord()
    {
        foreach (var width in new[] { 40.0, 90, 200 })
        {
            Assert.All(
                Lines("Press the cloth, fold it selvage to selvage, and cut from each fabric in this order", width),
                line => Assert.True(SetText.Of(line, Ten).Width <= width || !line.Contains(' '), line)
            );
        }
    }

    [Fact]
    public void AParagraphLeavesTwoLinesOnEitherPage()
    {
        var text = string.Join(' ', Enumerable.Repeat("word", 40));
        var lines = Lines(text, 60).Length;
        var part = Assert.IsType<Part>(Paragraph.Of(text, Ten).Lay(new(60, 14 * (lines - 1))));
        Assert.Equal(14 * (lines - 2), part.Height);
        Assert.IsType<Refused>(Paragraph.Of(text, Ten).Lay(new(60, 14)));
    }
}
