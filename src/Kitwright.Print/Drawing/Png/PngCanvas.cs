using SkiaSharp;
using Kitwright.Print.Text;

namespace Kitwright.Print.Drawing.Png;

/// <summary>Paints a drawing into pixels: the same tree that SVG and PDF are written from.</summary>
/// <remarks>
/// A fabric that only a web page defines is painted in its fallback color. Strokes grow with the picture, so that one
/// of 300 pixels and one of 6,000 look alike.
/// </remarks>
public sealed class PngCanvas : IDisposable
{
    /// <summary>Width in pixels at which strokes have the width that they state.</summary>
    private const double UsualWidth = 800;

    private readonly SKCanvas canvas;
    private readonly PngTiles tiles = new();
    private readonly double strokes;

    private PngCanvas(SKCanvas canvas, double strokes)
    {
        this.canvas = canvas;
        this.strokes = strokes;
    }

    /// <summary>Writes the part of a drawing that lies in a box.</summary>
    /// <param name="width">Of the picture, in pixels; its height follows from the box.</param>
    public static void Write(Node drawing, Box box, int width, Stream output)
    {
        var (wide, high) = PixelsOf(box, width);
        using var bitmap = new SKBitmap(wide, high, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        var scale = wide / box.Width;
        using (var png = new PngCanvas(canvas, Math.Max(1, wide / UsualWidth)))
        {
            png.Draw(drawing, Affine.Shift(-box.Left, -box.Top).Then(Affine.Scale(scale, scale)));
        }

        canvas.Flush();
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        data.SaveTo(output);
    }

    /// <summary>Width and height in pixels, the height to the nearest and at least one.</summary>
    public static (int Width, int Height) PixelsOf(Box box, int width) =>
        (width, (int)Math.Max(1, Math.Round(width * box.Height / box.Width)));

    public void Dispose() => tiles.Dispose();

    private void Draw(Node node, Affine transform)
    {
        switch (node)
        {
            case Group group:
                foreach (var child in group.Nodes)
                {
                    Draw(child, group.Transform.Then(transform));
                }

                break;
            case Shape shape:
                DrawShape(shape, transform);
                break;
            case TextLine line:
                DrawText(line, transform);
                break;
        }
    }

    private void DrawShape(Shape shape, Affine transform)
    {
        using var path = PngTiles.PathOf(shape.Outline.Moved(transform));
        using var paint = new SKPaint { IsAntialias = true };
        switch (shape.Fill)
        {
            case FlatPaint flat:
                paint.Color = PngTiles.Of(flat.Color);
                canvas.DrawPath(path, paint);
                break;
            case NamedPaint named:
                paint.Color = PngTiles.Of(named.Fallback);
                canvas.DrawPath(path, paint);
                break;
            case TilePaint tile:
                paint.Shader = tiles.Of(new(tile, transform));
                canvas.DrawPath(path, paint);
                break;
        }

        if (shape.Stroke is { } stroke)
        {
            using var pen = new SKPaint
            {
                IsAntialias = true,
                IsStroke = true,
                StrokeJoin = SKStrokeJoin.Round,
                StrokeWidth = (float)(stroke.Width * strokes),
                Color = PngTiles.Of(stroke.Ink),
            };
            using var dashes = stroke.Dash is { } dash
                ? SKPathEffect.CreateDash([(float)(dash * strokes), (float)(dash * strokes)], 0)
                : null;
            pen.PathEffect = dashes;
            canvas.DrawPath(path, pen);
        }
    }

    private void DrawText(TextLine line, Affine transform)
    {
        var start = transform.Apply(line.Start);
        using var ink = new SKPaint { IsAntialias = true, Color = PngTiles.Of(line.Text.Style.Ink) };
        foreach (var span in line.Text.Spans)
        {
            DrawSpan(span, line.Text.Style, start, transform.Factor, ink);
        }
    }

    private void DrawSpan(SetSpan span, TextStyle style, Place start, double scale, SKPaint ink)
    {
        using var data = SKData.CreateCopy(span.Face.File.Bytes);
        using var face = SKTypeface.FromData(data);
        using var font = new SKFont(face, (float)(style.Size * scale));
        var positions = new float[span.Glyphs.Length];
        var at = span.X * scale;
        for (var i = 0; i < positions.Length; i++)
        {
            positions[i] = (float)at;
            at += span.Face.File.Advance(span.Glyphs[i].Glyph) * style.Size * scale;
        }

        using var run = new SKTextBlobBuilder();
        run.AddHorizontalRun([.. span.Glyphs.Select(glyph => glyph.Glyph)], font, positions, 0);
        using var text = run.Build();
        if (text is not null)
        {
            canvas.DrawText(text, (float)start.X, (float)start.Y, ink);
        }
    }
}
