using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Pdf;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;
using Kitwright.Print.Text;
using Kitwright.Quilts;
using Kitwright.Sewing;
using Kitwright.Words;
using Role = Kitwright.Print.Drawing.Role;

namespace Kitwright.Print.Pages;

/// <summary>
/// Templates of a quilt's patches at their true size, and foundations of the blocks that suit them, as a PDF to be
/// printed without scaling. It needs no plan: patches that no ruler cuts are what it is for.
/// </summary>
public static class TemplateBook
{
    private const double AboveEdge = 34;
    private const double PointsPerInch = 72;

    /// <summary>A heading of two lines and two lines of small print over a tile.</summary>
    private const double AboveTile = 90;

    /// <summary>Two lines more, where a template says its hand.</summary>
    private const double AboveHanded = 26;

    /// <summary>A foundation of two sections is a seam like any other.</summary>
    private const int FewestSections = 3;

    /// <summary>Fabric over each section of a foundation, on every side ("at least 1/2 in", or 1.5 cm: common practice, no source).</summary>
    private static Length Over(LengthUnit units) => units == LengthUnit.Centimeter ? Length.Millimeters(15) : Length.Inches(0, 1, 2);

    /// <param name="output">Stays open.</param>
    public static void Write(Quilt quilt, PaperSize paper, Stream output, Catalog words)
    {
        var size = Sheet.Of(paper);
        double width = Sheet.TextWidth(size),
            height = Sheet.TextHeight(size);
        var title = words.Say("template.book", ("quilt", quilt.Name));
        var sections = Sections(quilt, width, height, words).ToArray();
        var pages = ImmutableArray.CreateBuilder<Node>();
        var bookmarks = ImmutableArray.CreateBuilder<Bookmark>();
        foreach (var section in sections)
        {
            bookmarks.Add(new(section.Title, pages.Count));
            pages.AddRange(Pager.Pages(section.Content, new(width, height)));
        }

        var feet = pages.Select((page, i) => Foot(page, title, i + 1, pages.Count, size, words));
        PdfCanvas.Write(new(title, words.Region, size, [.. feet], bookmarks.ToImmutable()), output);
    }

    private static IEnumerable<Section> Sections(Quilt quilt, double width, double height, Catalog words)
    {
        var pieces = Templates.Of(quilt);
        yield return Section.Titled(
            words.Say("template.title"),
            [
                Texts.Body(words.Say("template.how", ("seam", quilt.Seam))),
                Texts.Body(words.Say("template.caution")),
                ScaleCheck(words),
                .. pieces.SelectMany(piece => Template(piece, width, height, words)),
            ]
        );
        var seam = quilt.Seam.InInches.ToDouble();
        var foundations = Layout
            .Of(quilt)
            .Blocks.Where(block => block.Patches.Length >= FewestSections && quilt.Blocks.All(b => b.Id != block.Id || b.Patches.All(p => p.Arcs.IsEmpty)))
            .Select(block => (block, Order: FoundationOrder.Of([.. block.Patches.Select(p => p.Shape)])))
            .Where(x => x.Order is not null)
            .SelectMany(x => Foundation(quilt, x.block, x.Order!.Value, seam, width, height, words))
            .ToArray();
        if (foundations.Length > 0)
        {
            yield return Section.Titled(words.Say("foundation.title"), [Texts.Body(words.Say("foundation.how", ("over", Over(words.Units.Sizes)))), .. foundations]);
        }
    }

    private static IEnumerable<Element> Template(TemplatePiece piece, double width, double height, Catalog words)
    {
        var picture = TemplatePicture.Of(piece);
        var heading = Texts.Heading(words.Say("template.piece", ("label", piece.Label), ("block", piece.Block), ("role", piece.Role), ("count", piece.Count)));
        var alternative = words.Say("template.alt", ("label", piece.Label), ("block", piece.Block));
        var hand = piece.HasHand ? Texts.Small(words.Say("template.hand", ("mirror", piece.Mirror ?? "none"))) : null;
        if (Fits(picture, width, height))
        {
            return [new Together(Stack.Of(6, [heading, .. OrNone(hand), Figure(picture, alternative)]))];
        }

        // Larger than the sheet: on several, each with the lines at which they are joined.
        var tiles = SheetTiles.Of(picture.Width, picture.Height, width, height - AboveTile - (hand is null ? 0 : AboveHanded));
        var across = tiles.Max(tile => tile.Column) + 1;
        return tiles.Select(tile => new Together(
            Stack.Of(
                6,
                [
                    tile.Number == 1 ? heading : Texts.Heading(words.Say("template.sheet", ("label", piece.Label), ("number", tile.Number), ("count", tiles.Length))),
                    .. OrNone(tile.Number == 1 ? hand : null),
                    Texts.Small(words.Say("template.tiles", ("number", tile.Number), ("count", tiles.Length), ("across", across))),
                    Figure(TiledTemplate.Of(piece, tile), alternative),
                ]
            )
        ));
    }

    private static IEnumerable<Element> OrNone(Element? element) => element is null ? [] : [element];

    private static IEnumerable<Element> Foundation(Quilt quilt, BlockDesign block, ImmutableArray<int> order, double seam, double width, double height, Catalog words)
    {
        var picture = FoundationPicture.Of(block, order, seam);
        var roles = quilt.Roles.ToDictionary(r => r.Id, r => r.Name);
        var heading = Texts.Heading(words.Say("foundation.block", ("block", block.Name), ("sections", order.Length)));
        ImmutableArray<Message> sections = [.. order.Select((index, i) => SectionOf(block.Patches[index], i + 1, roles, words.Units.Sizes))];
        var cloth = Texts.Small(words.Say("foundation.sections", ("sections", sections)));
        var alternative = words.Say("foundation.alt", ("block", BlockName.BeforeBlock(block.Name)));
        if (Fits(picture, width, height))
        {
            return [new Together(Stack.Of(6, heading, cloth, Figure(picture, alternative)))];
        }

        var tiles = SheetTiles.Of(picture.Width, picture.Height, width, height - AboveTile);
        var across = tiles.Max(tile => tile.Column) + 1;
        return
        [
            new Together(Stack.Of(6, heading, cloth)),
            .. tiles.Select(tile => new Together(
                Stack.Of(
                    6,
                    Texts.Heading(words.Say("template.sheet", ("label", block.Name), ("number", tile.Number), ("count", tiles.Length))),
                    Texts.Small(words.Say("template.tiles", ("number", tile.Number), ("count", tiles.Length), ("across", across))),
                    Figure(TiledFoundation.Of(block, order, seam, tile), alternative)
                )
            )),
        ];
    }

    /// <summary>"2: dark, 4 × 3 1/2 in": the section's own extent and half an inch over on every side, up to the next eighth.</summary>
    private static Message SectionOf(Patch patch, int number, Dictionary<string, string> roles, LengthUnit units)
    {
        var (low, high) = patch.Shape.Bounds();
        var step = units == LengthUnit.Centimeter ? Length.Millimeters(5) : Length.Inches(0, 1, 8);
        return Message.Of(
            "foundation.section",
            ("number", number),
            ("role", roles.GetValueOrDefault(patch.Role, patch.Role)),
            ("width", (high.X - low.X).RoundUpTo(step) + (Over(units) * 2)),
            ("height", (high.Y - low.Y).RoundUpTo(step) + (Over(units) * 2))
        );
    }

    // A heading and a line or two stand above it.
    private static bool Fits(Picture picture, double width, double height) => picture.Width <= width && picture.Height <= height - 60;

    private static Picture Figure(Picture picture, string alternative) =>
        picture with
        {
            Drawing = new Group([picture.Drawing]) { Role = Role.Figure(alternative) },
        };

    /// <summary>An inch each way, or three centimeters: where it measures otherwise, nothing on the page is true.</summary>
    private static Row ScaleCheck(Catalog words)
    {
        var measured = Measured(words);
        var square = new Shape(Outline.Rectangle(new(0, 0, measured, measured)), null, Look.Edge) { Role = Role.Decoration };
        return new([new(measured, new Picture(square, measured, measured)), new(null, Texts.Body(words.Say("template.scale")))], 12);
    }

    private static Group Foot(Node page, string title, int number, int count, PageSize size, Catalog words)
    {
        var baseline = size.Height - AboveEdge;
        var name = SetText.Of(title, Look.Small);
        var place = SetText.Of(words.Say("print.page", ("number", number), ("count", count)), Look.Small);
        var measured = Measured(words);
        var middle = (size.Width - measured) / 2;
        // An inch, or three centimeters, on every sheet, for sheets that are printed alone; its ends are the edges of the bar.
        var inch = Outline.Rectangle(new(middle, baseline - 4, measured, 8));
        return new(
            [
                Group.At(Sheet.Side, Sheet.Head, page),
                new Group(
                    [
                        new TextLine(name, new(Sheet.Side, baseline)),
                        new Shape(inch, null, Look.Edge),
                        new TextLine(SetText.Of(words.Say("template.inch"), Look.Small), new(middle + measured + 6, baseline + 3)),
                        new TextLine(place, new(size.Width - Sheet.Side - place.Width, baseline)),
                    ]
                )
                {
                    Role = Role.Decoration,
                },
            ]
        );
    }

    /// <summary>What is drawn to be measured: an inch, or three centimeters.</summary>
    private static double Measured(Catalog words) => words.Units.Sizes == LengthUnit.Centimeter ? PointsPerInch * 30 / 25.4 : PointsPerInch;
}
