using System.Collections.Concurrent;
using System.Text;
using System.Text.RegularExpressions;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Pages;
using Kitwright.Quilts;
using Kitwright.Words;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Kitwright.Print.Tests.Pages;

/// <summary>A booklet as somebody else's reader gives it back: text in the order of the file, a space at each new line.</summary>
internal sealed class PrintedBooklet
{
    private static readonly ConcurrentDictionary<(string, int, PaperSize), PrintedBooklet> Printed = new();

    // The reader's pages take a hundred times the file's size: they are read again where nothing has held on to them.
    private readonly WeakReference<ReadPages?> read = new(null);

    private PrintedBooklet(Quilt quilt, int colorway, PaperSize paper)
    {
        Plan = Demo.Plan(quilt, colorway);
        using var output = new MemoryStream();
        Booklet.Write(quilt, Plan, Demo.Shelf, paper, Language(quilt), output);
        Bytes = output.ToArray();
        Texts = [.. Pages.Select(TextOf)];
    }

    private static Kitwright.Words.Catalog Language(Quilt quilt) =>
        quilt.Units == LengthUnit.Centimeter ? Kitwright.Words.Catalog.For(TradeWords.American, new(LengthUnit.Centimeter, LengthUnit.Meter)) : Kitwright.Words.Catalog.English;

    /// <summary>Printed and read once, for all tests.</summary>
    public static PrintedBooklet Of(string quilt, int colorway, PaperSize paper) =>
        Printed.GetOrAdd((quilt, colorway, paper), key => new(Demo.Read(key.Item1), key.Item2, key.Item3));

    /// <summary>A quilt that no file holds, in its first colorway.</summary>
    public static PrintedBooklet Print(Quilt quilt, PaperSize paper) => new(quilt, 0, paper);

    public QuiltPlan Plan { get; }
    public byte[] Bytes { get; }
    public PdfDocument Document => Open().Document;
    public IReadOnlyList<Page> Pages => Open().Pages;
    public IReadOnlyList<string> Texts { get; }

    /// <summary>Everything from the page that begins with a chapter's title to the page before the next one's.</summary>
    public string Chapter(string title, string next)
    {
        int first = Texts.ToList().FindIndex(text => text.StartsWith(title, StringComparison.Ordinal)),
            last = Texts.ToList().FindIndex(text => text.StartsWith(next, StringComparison.Ordinal));
        Assert.True(first >= 0 && last > first, $"{title} or {next} begins no page");
        return string.Join(' ', Texts.Skip(first).Take(last - first));
    }

    private ReadPages Open()
    {
        lock (read)
        {
            if (!read.TryGetTarget(out var pages))
            {
                var document = PdfDocument.Open(Bytes);
                pages = new(document, [.. document.GetPages()]);
                read.SetTarget(pages);
            }

            return pages;
        }
    }

    internal static string TextOf(Page page)
    {
        var text = new StringBuilder();
        Letter? before = null;
        foreach (var letter in page.Letters)
        {
            // A new line, or a jump to something beside it.
            if (before is not null && (Math.Abs(letter.StartBaseLine.Y - before.StartBaseLine.Y) > 1 || letter.StartBaseLine.X > before.EndBaseLine.X + 1))
            {
                text.Append(' ');
            }

            text.Append(letter.Value);
            before = letter;
        }

        return Regex.Replace(text.ToString(), @"\s+", " ");
    }

    private sealed record ReadPages(PdfDocument Document, IReadOnlyList<Page> Pages);
}
