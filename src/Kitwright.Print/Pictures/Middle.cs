using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>Where a label stands on a shape: the center of its area.</summary>
internal static class Middle
{
    public static Place Of(Outline outline)
    {
        var contour = outline.Contours[0];
        var corners = contour.Segments.Select(s => s.To).Prepend(contour.Start).ToArray();
        double area = 0,
            x = 0,
            y = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            Place p = corners[i],
                q = corners[(i + 1) % corners.Length];
            var cross = (p.X * q.Y) - (q.X * p.Y);
            area += cross;
            x += (p.X + q.X) * cross;
            y += (p.Y + q.Y) * cross;
        }

        return area == 0 ? contour.Start : new(x / (3 * area), y / (3 * area));
    }
}
