using System.Globalization;

namespace Kitwright.Fabrics.Prints;

/// <summary>An sRGB color in three bytes, mixed in whole numbers.</summary>
internal readonly record struct Tint(int Red, int Green, int Blue)
{
    public static Tint Leaf { get; } = new(0x5d, 0x7f, 0x4e);
    public static Tint Pollen { get; } = new(0xe9, 0xb8, 0x3f);
    public static Tint White { get; } = new(0xff, 0xff, 0xff);
    public static Tint Black { get; } = new(0, 0, 0);

    /// <summary>"#rrggbb"; gray where it is not that.</summary>
    public static Tint Parse(string text) =>
        text.Length == 7 && text[0] == '#' && int.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var rgb)
            ? new(rgb >> 16, (rgb >> 8) & 0xff, rgb & 0xff)
            : new(0x80, 0x80, 0x80);

    /// <summary><paramref name="percent"/> of the other color.</summary>
    public Tint Mix(Tint other, int percent) =>
        new(Mix(Red, other.Red, percent), Mix(Green, other.Green, percent), Mix(Blue, other.Blue, percent));

    private static int Mix(int from, int to, int percent) => ((from * (100 - percent)) + (to * percent) + 50) / 100;

    /// <summary>Rough lightness, 0 to 255 (integer Rec. 601 luma), good enough to choose a leaf that shows.</summary>
    public int Luma => ((299 * Red) + (587 * Green) + (114 * Blue)) / 1000;

    public override string ToString() => $"#{(Red << 16) | (Green << 8) | Blue:x6}";
}
