using Kitwright.Print.Pages;
using UglyToad.PdfPig;

namespace Kitwright.Print.Tests.Pages;

/// <summary>Templates read back from the file: an inch is 72 points, and a patch has its size.</summary>
public sealed class TemplateBookTest
{
    private static byte[] Write(PaperSize paper)
    {
        using var pdf = new MemoryStream();
        TemplateBook.Write(Demo.Quilt, paper, pdf, Kitwright.Words.Catalog.English);
        return pdf.ToArray();
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void AnInchIsAnInchOnEverySheet(PaperSize paper)
    {
        using var document = PdfDocument.Open(Write(paper));
        Assert.True(document.NumberOfPages > 1);
        foreach (var page in document.GetPages())
        {
            var lines = page.Paths.Select(p => p.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>();
            // The scale bar of the foot.
            Assert.Contains(lines, r => Math.Abs(r.Width - 72) < 0.01 && Math.Abs(r.Height - 8) < 0.01);
            Assert.Contains("1 in", page.Text, StringComparison.Ordinal);
        }
    }

    /// <summary>A corner square of the stars is 3 in finished, 3 1/2 in cut ([KC], [GMG]: finished + 1/2): 252 points.</summary>
    [Fact]
    public void APatchIsAsLargeAsItIsCut()
    {
        using var document = PdfDocument.Open(Write(PaperSize.Letter));
        var boxes = document.GetPages().SelectMany(p => p.Paths).Select(p => p.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>();
        Assert.Contains(boxes, r => Math.Abs(r.Width - (3.5 * 72)) < 0.01 && Math.Abs(r.Height - (3.5 * 72)) < 0.01);
    }

    /// <summary>
    /// A square of 20 in finished is cut 20 1/2 in a side: its cutting line is 4 × 1476 points, however many sheets it is
    /// on, and each sheet names those that it is joined to.
    /// </summary>
    [Theory]
    [InlineData(PaperSize.Letter, 3)]
    [InlineData(PaperSize.A4, 4)]
    public void ATemplateLargerThanTheSheetGoesOverSeveral(PaperSize paper, int across)
    {
        Kitwright.Measure.Length side = Kitwright.Measure.Length.Inches(20);
        var quilt = Demo.Quilt;
        var role = quilt.Roles[0].Id;
        var block = quilt.Blocks[0] with
        {
            Width = side,
            Height = side,
            Patches = [new("1", role, [new(0, 0), new(side, 0), new(side, side), new(0, side)], [])],
        };
        using var pdf = new MemoryStream();
        TemplateBook.Write(quilt with { Blocks = [block], Setting = quilt.Setting with { Cells = [[new(block.Id, 0, false)]] } }, paper, pdf, Kitwright.Words.Catalog.English);
        using var document = PdfDocument.Open(pdf.ToArray());

        var sheets = document.GetPages().Where(p => p.Text.Contains("half diamonds", StringComparison.Ordinal)).ToArray();
        Assert.Equal(3 * across, sheets.Length);
        Assert.DoesNotContain(document.GetPages(), p => p.Text.Contains("print it on larger paper", StringComparison.Ordinal));
        // The second sheet of the second row has neighbors on all sides.
        var inner = across + 2;
        Assert.All(
            new[] { $"2–{inner}", $"{inner - 1}–{inner}", $"{inner}–{inner + 1}", $"{inner}–{inner + across}" },
            word => Assert.Contains(word, sheets[inner - 1].Text, StringComparison.Ordinal)
        );
        // The dashed sewing line and the marks are set apart by dash and by length; joins by their thinner line.
        var cut = sheets
            .SelectMany(p => p.Paths)
            .Where(p => Math.Abs(p.LineWidth - Look.Edge.Width) < 0.01 && p.LineDashPattern is not { Array.Count: > 0 })
            .Select(p => p.GetBoundingRectangle())
            .OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .Where(r => Math.Min(r.Width, r.Height) < 0.01 && Math.Max(r.Width, r.Height) > 100);
        Assert.Equal(4 * 20.5 * 72, cut.Sum(r => Math.Max(r.Width, r.Height)), 1.0);
    }

    /// <summary>
    /// A foundation of three strips in a block of 20 in is 20 1/2 in a side: on as many sheets, every sheet that shows a
    /// section with its number, and the lines between sections 2 × 1440 points and more in all.
    /// </summary>
    [Fact]
    public void AFoundationLargerThanTheSheetGoesOverSeveral()
    {
        Kitwright.Measure.Length side = Kitwright.Measure.Length.Inches(20);
        var quilt = Demo.Quilt;
        var role = quilt.Roles[0].Id;
        var block = quilt.Blocks[0] with
        {
            Name = "Long strips",
            Width = side,
            Height = side,
            Patches = [.. new[] { (0, 6), (6, 13), (13, 20) }.Select((x, i) => new Kitwright.Quilts.BlockPatch($"{i + 1}", role, [new(x.Item1, 0), new(x.Item2, 0), new(x.Item2, side), new(x.Item1, side)], []))],
        };
        using var pdf = new MemoryStream();
        TemplateBook.Write(quilt with { Blocks = [block], Setting = quilt.Setting with { Cells = [[new(block.Id, 0, false)]] } }, PaperSize.Letter, pdf, Kitwright.Words.Catalog.English);
        using var document = PdfDocument.Open(pdf.ToArray());

        var sheets = document.GetPages().Where(p => p.Text.Contains("Long strips, sheet", StringComparison.Ordinal)).ToArray();
        Assert.Equal(9, sheets.Length);
        var between = sheets
            .SelectMany(p => p.Paths)
            .Where(p => Math.Abs(p.LineWidth - Look.Edge.Width) < 0.01 && p.LineDashPattern is not { Array.Count: > 0 })
            .Select(p => p.GetBoundingRectangle())
            .OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .Where(r => r.Width < 0.01 && r.Height > 100);
        // Each of the two lines between belongs to two sections, the two outer ones to one: six lines of 20 in.
        Assert.Equal(6 * 20 * 72, between.Sum(r => r.Height), 1.0);
        // Each of the three strips is seen on each of the three rows of sheets, on one sheet or two.
        Assert.All(sheets, sheet => Assert.Contains(sheet.GetWords(), w => w.Text is "1" or "2" or "3"));
    }

    /// <summary>Sections cross the sheets' joins anywhere: their numbers stand beside those of the joins.</summary>
    [Fact]
    public void NoNumberOfAFoundationLiesOnAnother()
    {
        var begun = Kitwright.Beginnings.NewQuilt.With(Kitwright.Blocks.BlockBook.Find("pineapple")!, Kitwright.Measure.LengthUnit.Inch);
        var quilt = (begun with { BlockWidth = Kitwright.Measure.Length.Inches(24), Columns = 2, Rows = 2 }).Make().Value!;
        using var pdf = new MemoryStream();
        TemplateBook.Write(quilt, PaperSize.Letter, pdf, Kitwright.Words.Catalog.English);
        using var document = PdfDocument.Open(pdf.ToArray());

        var sheets = document.GetPages().Where(p => p.Text.Contains("Pineapple, sheet", StringComparison.Ordinal)).ToArray();

        Assert.NotEmpty(sheets);
        foreach (var sheet in sheets)
        {
            var boxes = sheet.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).Select(letter => letter.BoundingBox).ToArray();
            for (var i = 0; i < boxes.Length; i++)
            {
                for (var j = i + 1; j < boxes.Length; j++)
                {
                    var across = Math.Min(boxes[i].Right, boxes[j].Right) - Math.Max(boxes[i].Left, boxes[j].Left);
                    var up = Math.Min(boxes[i].Top, boxes[j].Top) - Math.Max(boxes[i].Bottom, boxes[j].Bottom);
                    Assert.False(across > 1 && up > 1, $"page {sheet.Number}: two letters at {boxes[j].Left:0}, {boxes[j].Bottom:0}");
                }
            }
        }
    }
}
