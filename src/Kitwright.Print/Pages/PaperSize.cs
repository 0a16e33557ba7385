using Kitwright.Print.Drawing.Pdf;

namespace Kitwright.Print.Pages;

public enum PaperSize
{
    Letter,
    A4,
}

/// <summary>Sheet and margins, in points.</summary>
internal static class Sheet
{
    public const double Side = 54;
    public const double Head = 54;

    /// <summary>From the foot of the text to the foot of the sheet; the running foot stands in it.</summary>
    public const double Foot = 66;

    public static PageSize Of(PaperSize paper) =>
        paper switch
        {
            PaperSize.Letter => new(612, 792),
            // ISO 216: 210 × 297 mm.
            PaperSize.A4 => new(210 / 25.4 * 72, 297 / 25.4 * 72),
            _ => throw new ArgumentOutOfRangeException(nameof(paper)),
        };

    public static double TextWidth(PageSize size) => size.Width - (2 * Side);

    public static double TextHeight(PageSize size) => size.Height - Head - Foot;
}
