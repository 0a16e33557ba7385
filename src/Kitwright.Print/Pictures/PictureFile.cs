using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Png;
using Kitwright.Print.Drawing.Svg;

namespace Kitwright.Print.Pictures;

/// <summary>A picture that goes out as a file of its own, at any size.</summary>
/// <param name="Drawing">In its own units, y down.</param>
/// <param name="Box">The part that is seen.</param>
/// <param name="Label">What it shows, in words.</param>
public sealed record PictureFile(Node Drawing, Box Box, string Label)
{
    public const int LeastWidth = 16;
    public const int MostWidth = 20_000;

    /// <summary>Pixels of a picture; more would take gigabytes of memory while it is painted.</summary>
    public const long MostPixels = 100_000_000;

    public string Svg => SvgCanvas.Write(Drawing, new(Box, Label, Digits: 4, Hairlines: true));

    /// <param name="width">In pixels; see <see cref="Fits"/>.</param>
    public void WritePng(int width, Stream output) => PngCanvas.Write(Drawing, Box, width, output);

    /// <summary>Whether a picture of this width has no more than <see cref="MostPixels"/>.</summary>
    public bool Fits(int width)
    {
        var (wide, high) = PngCanvas.PixelsOf(Box, width);
        return width is >= LeastWidth and <= MostWidth && (long)wide * high <= MostPixels;
    }
}
