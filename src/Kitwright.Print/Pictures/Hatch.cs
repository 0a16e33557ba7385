using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>Slanting lines over a box: what is left of the cloth, so that it is told apart without color.</summary>
internal static class Hatch
{
    private const double Apart = 5;

    public static Shape Over(Box box)
    {
        var lines = new List<(Place, Place)>();
        for (var start = Apart; start < box.Width + box.Height; start += Apart)
        {
            // From the upper or right edge down to the left or lower one.
            var right = Math.Min(start, box.Width);
            var down = Math.Min(start, box.Height);
            lines.Add(
                (new(box.Left + right, box.Top + (start - right)), new(box.Left + (start - down), box.Top + down))
            );
        }

        return new(Outline.Lines(lines), null, new(Look.Line, 0.6));
    }
}
