using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Kits.Forms;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Pdf;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Kitwright.Words;
using Role = Kitwright.Print.Drawing.Role;

namespace Kitwright.Print.Pages;

/// <summary>
/// The sheets of a kit in one of its forms: what the shop cuts, which stays in the shop; then what the bag holds and what
/// its buyer cuts, which goes into it. A PDF like the booklet, and drawn from the same plan.
/// </summary>
public static class BagSheets
{
    private const double SwatchWidth = 40;
    private const double SwatchHeight = 30;

    /// <param name="language">Words and units; those of the plan's own quilt and shop.</param>
    /// <param name="output">Stays open.</param>
    public static void Write(Quilt quilt, QuiltPlan plan, KitForm form, Shelf shelf, PaperSize paper, Catalog language, Stream output)
    {
        var size = Sheet.Of(paper);
        var source = new BookletSource(quilt, plan, new FabricFills(plan, shelf), language, Sheet.TextWidth(size), Sheet.TextHeight(size));
        var pages = ImmutableArray.CreateBuilder<Node>();
        var bookmarks = ImmutableArray.CreateBuilder<Bookmark>();
        foreach (var section in Sections(source, KitBag.Of(plan, form)))
        {
            bookmarks.Add(new(section.Title, pages.Count));
            pages.AddRange(Pager.Pages(section.Content, new(source.Width, source.Height)));
        }

        var feet = pages.Select((page, i) => RunningFoot.Under(page, source, i + 1, pages.Count, size));
        PdfCanvas.Write(new(source.Title, language.Region, size, [.. feet], bookmarks.ToImmutable()), output);
    }

    /// <summary>"strip-cut", as people type it and messages are named.</summary>
    public static string NameOf(KitForm form) =>
        form switch
        {
            KitForm.Yardage => "yardage",
            KitForm.StripCut => "strip-cut",
            _ => "fully-cut",
        };

    private static Section[] Sections(BookletSource source, KitBag bag)
    {
        var form = source.Say($"form.{NameOf(bag.Form)}");
        var left = bag.Fabrics.Where(fabric => !fabric.CustomerCuts.IsEmpty).ToArray();
        return
        [
            Section.Titled(
                source.Say("form.shop"),
                [
                    Texts.Body(source.Say("bag.shop", ("quilt", source.Title), ("form", form))),
                    BeforeYouCut.Cutter(source),
                    .. bag.Fabrics.SelectMany(fabric => Cuts(source, fabric, source.Say(fabric.FromBolt), fabric.ShopCuts)),
                ]
            ),
            Section.Titled(
                source.Say("form.holds"),
                [
                    Texts.Body(source.Say("bag.holds", ("quilt", source.Title), ("form", form))),
                    Holds(source, bag),
                    Texts.Small(source.Say("bag.besides")),
                    .. left.Length == 0 ? [Texts.Body(source.Say("bag.nothing"))] : Left(source, left),
                ]
            ),
        ];
    }

    private static IEnumerable<Element> Left(BookletSource source, BagFabric[] fabrics) =>
        [
            Texts.Heading(source.Say("bag.you")),
            BeforeYouCut.Cutter(source),
            .. fabrics.SelectMany(fabric => Cuts(source, fabric, null, fabric.CustomerCuts)),
        ];

    private static Flow.Grid Holds(BookletSource source, KitBag bag) =>
        new(
            [SwatchWidth, null, null, 14],
            [Head(source, "print.column.letter"), Head(source, "print.column.fabric"), Head(source, "form.holds"), Texts.Plain("", Look.Small)],
            [
                .. bag.Fabrics.Select(fabric =>
                    (ImmutableArray<Element>)
                    [
                        Swatched(source, fabric),
                        Stack.Of(0, Texts.Plain(NameOf(source, fabric), Look.Body), Texts.Plain(Roles(source, fabric), Look.Small)),
                        new Stack([.. fabric.Holds.Select(line => Texts.Plain(source.Say(line), Look.Figures)), .. Spare(source, bag, fabric)]),
                        CuttingPages.TickBox(),
                    ]
                ),
            ],
            Look.Rule
        );

    // Strips name what is to spare among what the bag holds.
    private static IEnumerable<Element> Spare(BookletSource source, KitBag bag, BagFabric fabric) =>
        bag.Form == KitForm.Yardage && !fabric.Margin.IsZero ? [Texts.Plain(source.Say("bag.margin", ("length", fabric.Margin)), Look.Small)] : [];

    private static IEnumerable<Element> Cuts(BookletSource source, BagFabric fabric, string? under, ImmutableArray<Message> cuts)
    {
        ImmutableArray<Element> small = under is null ? [] : [Texts.Small(under)];
        yield return new Blank(2);
        yield return new Row(
            [
                new(SwatchWidth, Swatched(source, fabric)),
                new(
                    null,
                    Stack.Of(1, [Texts.Heading(source.Say("print.cloth", ("letter", fabric.Letter), ("roles", Roles(source, fabric)))), Texts.Small(NameOf(source, fabric)), .. small])
                ),
            ],
            10
        )
        {
            KeepWithNext = true,
        };
        yield return new Stack([.. cuts.Select(cut => new Together(new Row([new(10, CuttingPages.TickBox()), new(null, Texts.Body(source.Say(cut)))], 6)))], 4);
    }

    private static Picture Swatched(BookletSource source, BagFabric fabric) =>
        new(Swatch.Of(fabric.Letter, source.Fills.Of(Fabric(source, fabric)), SwatchWidth, SwatchHeight) with { Role = Role.Decoration }, SwatchWidth, SwatchHeight);

    private static PlanFabric Fabric(BookletSource source, BagFabric fabric) => source.Plan.Fabrics.First(f => f.Letter == fabric.Letter);

    private static string NameOf(BookletSource source, BagFabric fabric) =>
        source.Say("print.fabric", ("name", Fabric(source, fabric).Name), ("number", Fabric(source, fabric).Number ?? "none"));

    private static string Roles(BookletSource source, BagFabric fabric) =>
        source.RoleNames(source.Plan.Cloths.Where(cloth => cloth.Letter == fabric.Letter).SelectMany(cloth => cloth.Roles).Distinct(StringComparer.Ordinal));

    private static Paragraph Head(BookletSource source, string key) => Texts.Plain(source.Say(key), Look.Small);
}
