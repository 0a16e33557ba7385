using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pages;

/// <summary>The kinds of text of a booklet.</summary>
internal static class Texts
{
    public static Element SectionTitle(string text)
    {
        var bar = new Shape(Outline.Rectangle(new(0, 0, 28, 3)), Paint.Of(Look.Accent), null) { Role = Role.Decoration };
        return new Stack([new Picture(bar, 28, 3) { KeepWithNext = true }, Heading(text, Look.Section, level: 1)], 8) { KeepWithNext = true };
    }

    public static Element Heading(string text) => Heading(text, Look.Heading, level: 2);

    public static Paragraph Heading(string text, TextStyle style, int level) =>
        Paragraph.Of(text, style) with { Role = Role.Heading(level), KeepWithNext = true };

    public static Paragraph Body(string text) => Paragraph.Of(text, Look.Body);

    public static Paragraph Small(string text) => Paragraph.Of(text, Look.Small);

    /// <summary>Text whose role is given by the cell or the frame around it.</summary>
    public static Paragraph Plain(string text, TextStyle style) => Paragraph.Of(text, style) with { Role = null };
}
