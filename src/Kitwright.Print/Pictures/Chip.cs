using Kitwright.Print.Drawing;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>A word on a small slip of paper, so that it can be read on any fabric.</summary>
public static class Chip
{
    private const double Side = 2.5;
    private const double Above = 1.5;

    /// <param name="center">Of the slip, in points.</param>
    public static (Node Drawing, Box Box) Of(string word, TextStyle style, Place center)
    {
        var text = SetText.Of(word, style);
        double width = text.Width + (2 * Side),
            height = style.CapHeight + (2 * Above) + 1;
        var box = new Box(center.X - (width / 2), center.Y - (height / 2), width, height);
        return (
            new Group(
                [
                    new Shape(Outline.Rectangle(box), Paint.Of(Look.Paper), null),
                    new TextLine(text, new(box.Left + Side, center.Y + (style.CapHeight / 2))),
                ]
            ),
            box
        );
    }

    public static Box Size(string word, TextStyle style) => Of(word, style, default).Box;
}
