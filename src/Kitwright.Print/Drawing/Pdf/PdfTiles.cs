using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>
/// Printed fabrics in a PDF: each motif once as a form, laid side by side within the clip path of what it fills.
/// </summary>
internal sealed class PdfTiles
{
    private const double PointsPerInch = 72;

    /// <summary>Points to the inch of cloth below which a print is a blur that costs a reader time: its ground alone shows.</summary>
    private const double LeastScale = 3.5;

    private readonly Dictionary<string, XForm> forms = [];
    private readonly Dictionary<string, Box[]> extents = [];

    public PdfTiles(PdfDocument document, IEnumerable<PlacedTile> tiles)
    {
        foreach (var paint in tiles.Select(tile => tile.Paint).DistinctBy(paint => paint.Key))
        {
            forms.Add(paint.Key, Form(document, paint));
            extents.Add(paint.Key, [.. paint.Motif.Select(shape => shape.Outline.Bounds())]);
        }
    }

    /// <param name="outline">What is filled, on the page.</param>
    /// <param name="transform">From inches of cloth to the page.</param>
    public void Fill(XGraphics graphics, TilePaint paint, Outline outline, XGraphicsPath path, Affine transform)
    {
        if (transform.Factor < LeastScale)
        {
            return;
        }

        var corner = transform.Apply(new(0, 0));
        double width = paint.Width * transform.Factor,
            height = paint.Height * transform.Factor;
        var bounds = outline.Bounds();
        var small = bounds.Width * bounds.Height < width * height;
        var state = graphics.Save();
        graphics.IntersectClip(path);
        foreach (var (column, row) in Cells(outline, corner, width, height))
        {
            var place = new Place(corner.X + (column * width), corner.Y + (row * height));
            if (small)
            {
                DrawSeen(graphics, paint, new(transform.Factor, 0, 0, transform.Factor, place.X, place.Y), bounds);
            }
            else
            {
                graphics.DrawImage(forms[paint.Key], place.X, place.Y, width, height);
            }
        }

        graphics.Restore(state);
    }

    // A swatch shows a corner of a large print: a whole form for it would cost a reader most of its time.
    private void DrawSeen(XGraphics graphics, TilePaint paint, Affine toPage, Box seen)
    {
        // The page's box in inches of cloth.
        var window = new Box((seen.Left - toPage.E) / toPage.A, (seen.Top - toPage.F) / toPage.D, seen.Width / toPage.A, seen.Height / toPage.D);
        for (var i = 0; i < paint.Motif.Length; i++)
        {
            if (extents[paint.Key][i].Meets(window))
            {
                DrawFlat(graphics, paint.Motif[i], paint.Motif[i].Outline.Moved(toPage));
            }
        }
    }

    private static void DrawFlat(XGraphics graphics, Shape shape, Outline outline)
    {
        var brush = shape.Fill is FlatPaint flat ? PdfInks.Brush(flat.Color) : null;
        graphics.DrawPath(PdfInks.Pen(shape.Stroke), brush, PdfInks.PathOf(outline));
    }

    /// <summary>Only the repeats that some contour may show.</summary>
    private static HashSet<(int Column, int Row)> Cells(Outline outline, Place corner, double width, double height)
    {
        var cells = new HashSet<(int, int)>();
        foreach (var contour in outline.Contours)
        {
            var box = new Outline([contour]).Bounds();
            int left = (int)Math.Floor((box.Left - corner.X) / width),
                right = (int)Math.Ceiling((box.Right - corner.X) / width),
                top = (int)Math.Floor((box.Top - corner.Y) / height),
                bottom = (int)Math.Ceiling((box.Bottom - corner.Y) / height);
            for (var row = top; row < bottom; row++)
            {
                for (var column = left; column < right; column++)
                {
                    cells.Add((column, row));
                }
            }
        }

        return cells;
    }

    private static XForm Form(PdfDocument document, TilePaint paint)
    {
        var form = new XForm(document, XUnit.FromInch(paint.Width), XUnit.FromInch(paint.Height));
        using (var graphics = XGraphics.FromForm(form))
        {
            var toPoints = Affine.Scale(PointsPerInch, PointsPerInch);
            foreach (var shape in paint.Motif)
            {
                DrawFlat(graphics, shape, shape.Outline.Moved(toPoints));
            }
        }

        form.DrawingFinished();
        return form;
    }
}
