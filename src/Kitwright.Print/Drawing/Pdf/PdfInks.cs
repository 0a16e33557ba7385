using Kitwright.Print.Fonts;
using Kitwright.Print.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>Pens, brushes, paths and text for one document.</summary>
internal sealed class PdfInks
{
    private readonly Dictionary<(string Face, double Size), XFont> fonts = [];
    private SetSpan? drawing;

    public PdfInks(PdfDocument document) =>
        // The library finds glyphs by code point; ours may be tabular figures or small figures of a fraction. The
        // code points stay, so that the text reads back as it was written.
        document.RenderEvents.RenderTextEvent += (_, text) =>
        {
            for (var i = 0; i < text.CodePointGlyphIndexPairs.Length; i++)
            {
                var glyph = drawing!.Glyphs[i];
                text.CodePointGlyphIndexPairs[i] = new(glyph.CodePoint, glyph.Glyph);
            }
        };

    public static XSolidBrush Brush(Color color) => new(Of(color));

    public static XPen? Pen(Stroke? stroke)
    {
        if (stroke is null)
        {
            return null;
        }

        var pen = new XPen(Of(stroke.Ink), stroke.Width) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Flat };
        if (stroke.Dash is { } dash)
        {
            // The library counts dashes in stroke widths.
            pen.DashPattern = [dash / stroke.Width, dash / stroke.Width];
        }

        return pen;
    }

    public static XGraphicsPath PathOf(Outline outline)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        foreach (var contour in outline.Contours)
        {
            path.StartFigure();
            var at = contour.Start;
            foreach (var segment in contour.Segments)
            {
                if (segment.Curve)
                {
                    path.AddBezier(Of(at), Of(segment.First), Of(segment.Second), Of(segment.To));
                }
                else
                {
                    path.AddLine(Of(at), Of(segment.To));
                }

                at = segment.To;
            }

            if (contour.Closed)
            {
                path.CloseFigure();
            }
        }

        return path;
    }

    public void DrawSpan(XGraphics graphics, SetSpan span, TextStyle style, Place start)
    {
        drawing = span;
        graphics.DrawString(span.Text, Font(FeatureFaces.NameOf(span.Face, span.Feature), style.Size), Brush(style.Ink), start.X + span.X, start.Y);
    }

    private XFont Font(string face, double size)
    {
        if (!fonts.TryGetValue((face, size), out var font))
        {
            font = new XFont(face, size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
            fonts.Add((face, size), font);
        }

        return font;
    }

    private static XColor Of(Color color) => XColor.FromArgb(color.Red, color.Green, color.Blue);

    private static XPoint Of(Place place) => new(place.X, place.Y);
}
