using SkiaSharp;

namespace Kitwright.Print.Drawing.Png;

/// <summary>Printed fabrics as shaders, each made once for a picture.</summary>
internal sealed class PngTiles : IDisposable
{
    private readonly Dictionary<PlacedTile, (SKShader Shader, SKPicture Picture)> known = [];

    public SKShader Of(PlacedTile tile)
    {
        if (!known.TryGetValue(tile, out var made))
        {
            made = Make(tile);
            known.Add(tile, made);
        }

        return made.Shader;
    }

    public static SKColor Of(Color color) => new(color.Red, color.Green, color.Blue);

    public static SKPath PathOf(Outline outline)
    {
        using var path = new SKPathBuilder { FillType = SKPathFillType.Winding };
        foreach (var contour in outline.Contours)
        {
            path.MoveTo((float)contour.Start.X, (float)contour.Start.Y);
            foreach (var segment in contour.Segments)
            {
                if (segment.Curve)
                {
                    path.CubicTo(Of(segment.First), Of(segment.Second), Of(segment.To));
                }
                else
                {
                    path.LineTo(Of(segment.To));
                }
            }

            if (contour.Closed)
            {
                path.Close();
            }
        }

        return path.Detach();
    }

    public void Dispose()
    {
        foreach (var (shader, picture) in known.Values)
        {
            shader.Dispose();
            picture.Dispose();
        }
    }

    private static (SKShader Shader, SKPicture Picture) Make(PlacedTile tile)
    {
        var factor = tile.Transform.Factor;
        var corner = tile.Transform.Apply(new(0, 0));
        var repeat = new SKRect(0, 0, (float)(tile.Paint.Width * factor), (float)(tile.Paint.Height * factor));
        using var recorder = new SKPictureRecorder();
        var canvas = recorder.BeginRecording(repeat);
        canvas.Clear(Of(tile.Paint.Ground));
        foreach (var shape in tile.Paint.Motif)
        {
            using var path = PathOf(shape.Outline.Moved(Affine.Scale(factor, factor)));
            using var paint = new SKPaint { IsAntialias = true, Color = shape.Fill is FlatPaint flat ? Of(flat.Color) : SKColors.Transparent };
            canvas.DrawPath(path, paint);
        }

        var picture = recorder.EndRecording();
        var shader = picture.ToShader(
            SKShaderTileMode.Repeat,
            SKShaderTileMode.Repeat,
            SKFilterMode.Linear,
            SKMatrix.CreateTranslation((float)corner.X, (float)corner.Y),
            repeat
        );
        return (shader, picture);
    }

    private static SKPoint Of(Place place) => new((float)place.X, (float)place.Y);
}
