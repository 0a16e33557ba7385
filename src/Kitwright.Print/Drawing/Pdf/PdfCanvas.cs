using Kitwright.Print.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>
/// Writes pages as tagged PDF: vector only, our own fonts subset and embedded, each part with its role. All transforms
/// are worked into the coordinates, so a point on the page is a point in the file.
/// </summary>
public sealed class PdfCanvas
{
    private readonly UAManager access;
    private readonly XGraphics graphics;
    private readonly PdfInks inks;
    private readonly PdfTiles tiles;
    private readonly PdfIds ids;
    private readonly double pageHeight;

    private PdfCanvas(UAManager access, XGraphics graphics, PdfInks inks, PdfTiles tiles, PdfIds ids, double pageHeight)
    {
        this.ids = ids;
        this.access = access;
        this.graphics = graphics;
        this.inks = inks;
        this.tiles = tiles;
        this.pageHeight = pageHeight;
    }

    private StructureBuilder Structure => access.StructureBuilder;

    public static void Write(PrintedBook book, Stream output)
    {
        FaceResolver.Install();
        using var document = new PdfDocument();
        document.Info.Title = book.Title;
        document.Info.Creator = "Kitwright";
        document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestCompression;
        // Forms must be drawn before the accessibility manager listens: it knows pages only.
        var tiles = new PdfTiles(document, book.Pages.SelectMany(page => Tiles.In(page, Affine.Identity)));
        var inks = new PdfInks(document);
        var access = UAManager.ForDocument(document);
        access.SetDocumentLanguage(book.Language);
        var ids = new PdfIds();
        foreach (var drawing in book.Pages)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(book.Size.Width);
            page.Height = XUnit.FromPoint(book.Size.Height);
            using var graphics = XGraphics.FromPdfPage(page);
            var canvas = new PdfCanvas(access, graphics, inks, tiles, ids, book.Size.Height);
            // The library nests the first element of a page wrongly unless an artifact goes before it.
            canvas.Artifact(() => graphics.DrawRectangle(XBrushes.White, 0, 0, book.Size.Width, book.Size.Height));
            canvas.Draw(drawing, Affine.Identity, inElement: false);
        }

        foreach (var bookmark in book.Bookmarks)
        {
            document.Outlines.Add(bookmark.Title, document.Pages[bookmark.Page], true);
        }

        ids.Write(access.StructureTreeRoot);
        document.Save(output, closeStream: false);
    }

    /// <param name="inElement">Whether a role has been given already, so that content belongs to it.</param>
    private void Draw(Node node, Affine transform, bool inElement)
    {
        switch (node.Role)
        {
            case null:
                DrawContent(node, transform, inElement);
                break;
            case DecorationRole:
                Artifact(() => DrawContent(node, transform, inElement: true));
                break;
            case FigureRole figure:
                Figure(figure, node, transform);
                break;
            case TableRole or TableRowRole:
                Structure.BeginElement(PdfTags.Of(node.Role));
                DrawContent(node, transform, inElement: false);
                Structure.End();
                break;
            default:
                Structure.BeginElement(PdfTags.Of(node.Role));
                PdfTags.Scope(Structure, node.Role);
                DrawContent(node, transform, inElement: true);
                Structure.End();
                break;
        }
    }

    private void DrawContent(Node node, Affine transform, bool inElement)
    {
        if (node is Group group)
        {
            var inner = group.Transform.Then(transform);
            foreach (var child in group.Nodes)
            {
                Draw(child, inner, inElement);
            }
        }
        else if (inElement)
        {
            DrawLeaf(node, transform);
        }
        else
        {
            Artifact(() => DrawLeaf(node, transform));
        }
    }

    private void DrawLeaf(Node node, Affine transform)
    {
        if (node is Shape shape)
        {
            DrawShape(shape, transform);
        }
        else if (node is TextLine line)
        {
            var start = transform.Apply(line.Start);
            foreach (var span in line.Text.Spans)
            {
                inks.DrawSpan(graphics, span, line.Text.Style, start);
            }
        }
    }

    private void DrawShape(Shape shape, Affine transform)
    {
        var outline = shape.Outline.Moved(transform);
        var path = PdfInks.PathOf(outline);
        if (shape.Fill is TilePaint tile)
        {
            graphics.DrawPath(PdfInks.Brush(tile.Ground), path);
            tiles.Fill(graphics, tile, outline, path, transform);
        }

        var brush = shape.Fill is FlatPaint flat ? PdfInks.Brush(flat.Color) : null;
        if (brush is not null || shape.Stroke is not null)
        {
            graphics.DrawPath(PdfInks.Pen(shape.Stroke), brush, path);
        }
    }

    private void Artifact(Action draw)
    {
        access.BeginGraphicMode();
        Structure.BeginArtifact();
        draw();
        access.BeginGraphicMode();
        Structure.End();
    }

    private void Figure(FigureRole figure, Node node, Affine transform)
    {
        var box = Extent.Of(node, transform);
        access.BeginGraphicMode();
        // The library writes the box as it is given: y counts from the foot of the page.
        Structure.BeginElement(
            PdfIllustrationElementTag.Figure,
            figure.Alternative,
            new XRect(box.Left, pageHeight - box.Bottom, box.Width, box.Height)
        );
        ids.Name(Structure.CurrentStructureElement, node.Id);
        DrawContent(node, transform, inElement: true);
        access.BeginGraphicMode();
        Structure.End();
    }
}
