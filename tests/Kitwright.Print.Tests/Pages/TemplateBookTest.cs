using Kitwright.Print.Pages;
using UglyToad.PdfPig;

namespace Kitwright.Print.Tests.Pages;

/// <summary>Templates read back from the file: an inch is 72 points, and a patch has its size.</summary>
public sealed class TemplateBookTest
{
    private static byte[] Write(PaperSize paper)
    {
        using var pdf = new MemoryStream();
        TemplateBook.Write(Demo.Quilt, paper, pdf);
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
}
