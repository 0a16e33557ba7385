using System.Collections.Immutable;
using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>Where a label stands on a shape: the center of its area.</summary>
internal static class Middle
{
    public static Place Of(Outline outline)
    {
        var contour = outline.Contours[0];
        return Of([contour.Start, .. contour.Segments.Select(segment => segment.To)]);
    }

    public static Place Of(ImmutableArray<Place> corners)
    {
        double area = 0,
            x = 0,
            y = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            Place p = corners[i],
                q = corners[(i + 1) % corners.Length];
            var cross = Cross(p, q);
            area += cross;
            x += (p.X + q.X) * cross;
            y += (p.Y + q.Y) * cross;
        }

        return area == 0 ? corners[0] : new(x / (3 * area), y / (3 * area));
    }

    public static double AreaOf(ImmutableArray<Place> corners) =>
        Math.Abs(corners.Select((p, i) => Cross(p, corners[(i + 1) % corners.Length])).Sum()) / 2;

    private static double Cross(Place p, Place q) => (p.X * q.Y) - (q.X * p.Y);
}
