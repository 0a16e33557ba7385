using Kitwright.Plans;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>A small arrow that points up the print of a directional cloth, and down as well where it may be upside down.</summary>
internal static class PrintArrow
{
    private const double Barb = 2.5;

    /// <param name="middle">Its middle, in points.</param>
    /// <returns>Nothing for cloth whose print may lie any way round.</returns>
    public static IEnumerable<Node> At(Place middle, double length, PrintDirection direction)
    {
        if (direction == PrintDirection.Any)
        {
            yield break;
        }

        Place top = new(middle.X, middle.Y - (length / 2)),
            foot = new(middle.X, middle.Y + (length / 2));
        var lines = new List<(Place, Place)> { (foot, top), (new(top.X - Barb, top.Y + Barb), top), (top, new(top.X + Barb, top.Y + Barb)) };
        if (direction == PrintDirection.TwoWay)
        {
            lines.AddRange([(new(foot.X - Barb, foot.Y - Barb), foot), (foot, new(foot.X + Barb, foot.Y - Barb))]);
        }

        yield return new Shape(Outline.Lines(lines), null, new(Look.Ink, 0.9)) { Class = "print-arrow" };
    }
}
