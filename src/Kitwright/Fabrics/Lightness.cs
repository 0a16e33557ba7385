using System.Globalization;

namespace Kitwright.Fabrics;

/// <summary>How light a color is.</summary>
public static class Lightness
{
    public const double Middle = 50;

    /// <summary>CIELAB L* of a color in sRGB, "#rrggbb" (IEC 61966-2-1 and CIE 15, from memory); the middle where it is no such.</summary>
    public static double Of(string color)
    {
        if (color.Length != 7 || !int.TryParse(color.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var rgb))
        {
            return Middle;
        }

        var y = (0.2126 * Linear(rgb >> 16)) + (0.7152 * Linear((rgb >> 8) & 255)) + (0.0722 * Linear(rgb & 255));
        return y > 216.0 / 24389 ? (116 * Math.Cbrt(y)) - 16 : y * 24389 / 27;
    }

    private static double Linear(int channel)
    {
        var v = channel / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
    }
}
