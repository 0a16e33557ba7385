using System.Globalization;

namespace Kitwright.Print.Drawing;

/// <summary>An sRGB color.</summary>
public readonly record struct Color(byte Red, byte Green, byte Blue)
{
    public static Color White => new(255, 255, 255);

    /// <summary>Reads "#rrggbb"; anything else is a fault of ours, for files are checked when they are read.</summary>
    public static Color Parse(string text) =>
        text.Length == 7 && text[0] == '#' && int.TryParse(text.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var rgb)
            ? new((byte)(rgb >> 16), (byte)((rgb >> 8) & 255), (byte)(rgb & 255))
            : throw new FormatException($"Not a color: {text}");

    /// <summary>This color laid thinly over another: 0 gives the other, 1 this.</summary>
    public Color Over(Color other, double share)
    {
        byte Mix(byte mine, byte theirs) => (byte)Math.Round((share * mine) + ((1 - share) * theirs));
        return new(Mix(Red, other.Red), Mix(Green, other.Green), Mix(Blue, other.Blue));
    }

    /// <summary>Relative luminance from 0 (black) to 1 (white). Source: WCAG 2.2, "relative luminance" (from memory).</summary>
    public double Luminance
    {
        get
        {
            static double Linear(byte channel)
            {
                var value = channel / 255.0;
                return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
            }

            return (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));
        }
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");
}
