using System.Diagnostics;
using System.Text.RegularExpressions;
using Kitwright.Print.Pages;
using UglyToad.PdfPig.Tokens;

namespace Kitwright.Print.Tests.Pages;

/// <summary>What holds for every page, whatever stands on it.</summary>
public sealed class SheetTest
{
    public static TheoryData<PaperSize, double, double> Papers => new() { { PaperSize.Letter, 612, 792 }, { PaperSize.A4, 595.2756, 841.8898 } };

    [Theory, MemberData(nameof(Papers))]
    public void PagesHaveTheSizeOfThePaper(PaperSize paper, double width, double height)
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, paper);
        Assert.All(booklet.Pages, page => Assert.Equal((width, height), (page.Width, page.Height), (a, b) => Near(a.Item1, b.Item1) && Near(a.Item2, b.Item2)));
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 0.001;

    [Theory, MemberData(nameof(Papers))]
    public void TheSquareIsOneInchExactly(PaperSize paper, double width, double height)
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, paper);
        var page = booklet.Pages.Single(p => p.Text.Contains("exactly one inch", StringComparison.Ordinal));
        var boxes = page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>();
        var square = Assert.Single(boxes, box => Math.Abs(box.Width - 72) < 1);
        Assert.Equal(72.00, square.Width, 6);
        Assert.Equal(72.00, square.Height, 6);
        Assert.True(square.Right < width && square.Top < height);
    }

    [Theory, MemberData(nameof(Papers))]
    public void EachPageCarriesItsNumberAndTheMarkOfThePlan(PaperSize paper, double width, double height)
    {
        Assert.True(width < height);
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, paper);
        for (var i = 0; i < booklet.Pages.Count; i++)
        {
            Assert.Contains($"page {i + 1} of {booklet.Pages.Count}", booklet.Texts[i], StringComparison.Ordinal);
            Assert.Contains($"plan {booklet.Plan.Mark}", booklet.Texts[i], StringComparison.Ordinal);
        }
    }

    [Theory, MemberData(nameof(Papers))]
    public void NothingLiesOutsideThePageAndNoTextIsSmallerThanNinePoints(PaperSize paper, double width, double height)
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, paper);
        foreach (var page in booklet.Pages)
        {
            Assert.All(page.Letters, letter => Assert.True(letter.PointSize >= 9, $"{letter.Value} on page {page.Number}"));
            var boxes = page.Letters.Select(letter => letter.BoundingBox).Concat(page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>());
            Assert.All(
                boxes,
                box => Assert.True(box.Left >= -0.001 && box.Bottom >= -0.001 && box.Right <= width + 0.001 && box.Top <= height + 0.001, $"{box} on page {page.Number}")
            );
        }
    }

    [Fact]
    public void TextKeepsToTheMargins()
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, PaperSize.Letter);
        foreach (var page in booklet.Pages)
        {
            // A word under the last part of a row may reach out by half its width.
            Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Left, 54 - 10, 612 - 54 + 10));
        }
    }

    [Fact]
    public void LettersComeFromSubsetsOfOurOwnFontsAndReadBackAsWritten()
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, PaperSize.Letter);
        var fonts = booklet.Pages.SelectMany(page => page.Letters).Select(letter => letter.FontName!).Distinct().ToList();
        // Six capitals and a plus sign mark a subset (ISO 32000-1, 9.6.4).
        Assert.All(fonts, font => Assert.Matches(@"^[A-Z]{6}\+(Inter|Itnum|Inumr|Idnom|DejaVu)", font));
        Assert.Contains(booklet.Texts, text => text.Contains("3 1/2 × 6 1/2", StringComparison.Ordinal));
    }

    [Fact]
    public void EveryFontIsEmbedded()
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, PaperSize.Letter);
        var lines = Poppler("pdffonts", booklet.Bytes).Skip(2).ToList();
        Assert.NotEmpty(lines);
        // Columns from the right: object and generation, unicode, subset, embedded.
        Assert.All(lines, line => Assert.Equal(["yes", "yes", "yes"], line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^5..^2]));
    }

    [Fact]
    public void ThePdfIsTaggedSpeaksEnglishAndHasAnOutline()
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, PaperSize.Letter);
        var catalog = booklet.Document.Structure.Catalog.CatalogDictionary;
        Assert.True(catalog.ContainsKey(NameToken.Create("StructTreeRoot")));
        Assert.Equal("en-US", ((StringToken)catalog.Data["Lang"]).Data);
        Assert.True(booklet.Document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            ["What you need", "Before you cut", "Cutting", "Labels", "Laying it out", "Sewing the top", "Backing, batting and binding"],
            bookmarks.Roots.Select(node => node.Title).Skip(1)
        );
    }

    [Fact]
    public void HeadingsTablesAndPicturesAreTaggedAsSuch()
    {
        var booklet = PrintedBooklet.Of(Demo.Stars, 0, PaperSize.Letter);
        var structure = string.Join('\n', Poppler("pdfinfo", booklet.Bytes, "-struct"));
        Assert.Equal(8, Regex.Count(structure, @"\bH1\b"));
        Assert.Equal(5, Regex.Count(structure, "/Scope /Column"));
        Assert.Equal(booklet.Plan.Needs.Lengths.Length + 2, Regex.Count(structure, @"\bTR\b"));
        var steps = booklet.Plan.Sewing.Recipes.Length;
        Assert.True(Regex.Count(structure, "Figure") > steps);
    }

    /// <summary>Runs a tool of poppler on the bytes; without it the test is skipped.</summary>
    private static string[] Poppler(string tool, byte[] pdf, params string[] options)
    {
        var file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(file, pdf);
        try
        {
            using var process = Process.Start(new ProcessStartInfo(tool, [.. options, file]) { RedirectStandardOutput = true })!;
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip($"skipped: {tool} absent");
            throw;
        }
        finally
        {
            File.Delete(file);
        }
    }
}
