using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>
/// Printed fabrics in a PDF: each motif once as a form, laid side by side within the clip path of what it fills.
/// </summary>
internal sealed class PdfTiles
{
    private const double PointsPerInch = 72;

    private readonly Dictionary<string, XForm> forms = [];

    public PdfTiles(PdfDocument document, IEnumerable<PlacedTile> tiles)
    {
        foreach (var paint in tiles.Select(tile => tile.Paint).DistinctBy(paint => paint.Key))
        {
            forms.Add(paint.Key, Form(document, paint));
        }
    }

    /// <param name="outline">What is filled, on the page.</param>
    /// <param name="transform">From inches of cloth to the page.</param>
    public void Fill(XGraphics graphics, TilePaint paint, Outline outline, XGraphicsPath path, Affine transform)
    {
        var form = forms[paint.Key];
        var corner = transform.Apply(new(0, 0));
        double width = paint.Width * transform.Factor,
            height = paint.Height * transform.Factor;
        var state = graphics.Save();
        graphics.IntersectClip(path);
        foreach (var (column, row) in Cells(outline, corner, width, height))
        {
            graphics.DrawImage(form, corner.X + (column * width), corner.Y + (row * height), width, height);
        }

        graphics.Restore(state);
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
                var brush = shape.Fill is FlatPaint flat ? PdfInks.Brush(flat.Color) : null;
                graphics.DrawPath(PdfInks.Pen(shape.Stroke), brush, PdfInks.PathOf(shape.Outline.Moved(toPoints)));
            }
        }

        form.DrawingFinished();
        return form;
    }
}
