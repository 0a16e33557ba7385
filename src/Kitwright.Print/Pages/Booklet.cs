using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Pdf;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Kitwright.Words;
using Kitwright.WorkTimes;

namespace Kitwright.Print.Pages;

/// <summary>
/// The printed pattern that goes with a kit: one PDF per quilt and colorway, drawn from the plan alone. Vector, tagged,
/// fonts embedded.
/// </summary>
public static class Booklet
{
    /// <param name="quilt">The quilt of the plan: its sentences open the booklet.</param>
    /// <param name="shelf">Gives the prints of the plan's fabrics; one that it lacks is drawn in its color.</param>
    /// <param name="language">Words and units; those of the plan's own quilt and shop.</param>
    /// <param name="output">Stays open.</param>
    /// <param name="sewist">Whose times and hand; the usual ones where null.</param>
    public static void Write(Quilt quilt, QuiltPlan plan, Shelf shelf, PaperSize paper, Catalog language, Stream output, Sewist? sewist = null)
    {
        var size = Sheet.Of(paper);
        var source = new BookletSource(
            quilt,
            plan,
            new FabricFills(plan, shelf),
            language,
            Sheet.TextWidth(size),
            Sheet.TextHeight(size)
        )
        {
            Sewist = sewist ?? Sewist.Usual,
        };
        var pages = ImmutableArray.CreateBuilder<Node>();
        var bookmarks = ImmutableArray.CreateBuilder<Bookmark>();
        foreach (var section in Sections(source))
        {
            bookmarks.Add(new(section.Title, pages.Count));
            pages.AddRange(Pager.Pages(section.Content, new(source.Width, source.Height)));
        }

        var feet = pages.Select((page, i) => RunningFoot.Under(page, source, i + 1, pages.Count, size));
        PdfCanvas.Write(new(source.Title, language.Region, size, [.. feet], bookmarks.ToImmutable()), output);
    }

    private static IEnumerable<Section> Sections(BookletSource source) =>
        [
            CoverPage.Of(source),
            NeedsPage.Of(source),
            BeforeYouCut.Of(source),
            CuttingPages.Of(source),
            LabelPages.Of(source),
            LayoutPage.Of(source),
            SewingPages.Of(source),
            FinishingPage.Of(source),
        ];
}

/// <summary>A chapter, which begins on a page of its own.</summary>
internal sealed record Section(string Title, Element Content)
{
    /// <summary>A chapter under its title.</summary>
    public static Section Titled(string title, params IEnumerable<Element> content) =>
        new(title, new Stack([Texts.SectionTitle(title), .. content], 10));
}
