using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Print.Pages;

/// <summary>On which paper something is printed.</summary>
public static class Papers
{
    /// <summary>Where nobody says: A4 for a quilt in centimeters, US Letter for one in inches.</summary>
    public static PaperSize UsualFor(Quilt quilt) => quilt.Units == LengthUnit.Centimeter ? PaperSize.A4 : PaperSize.Letter;

    /// <summary>"letter" or "a4", in any capitals; null where there is no such paper.</summary>
    public static PaperSize? Named(string text) =>
        Enum.GetNames<PaperSize>().Contains(text, StringComparer.OrdinalIgnoreCase) ? Enum.Parse<PaperSize>(text, ignoreCase: true) : null;
}
