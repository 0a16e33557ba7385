using System.Globalization;
using System.Text;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.App.Features.Pictures;

/// <summary>Writes exact shapes as SVG path data in inches. Drawing only: no measure is read back from it.</summary>
public static class Outline
{
    /// <summary>Closed outlines of many polygons as one path; y is turned down from <paramref name="height"/>.</summary>
    public static string Path(IEnumerable<Polygon> polygons, Length height)
    {
        var path = new StringBuilder();
        foreach (var polygon in polygons)
        {
            for (var i = 0; i < polygon.Corners.Length; i++)
            {
                var (x, y) = Down(polygon.Corners[i], height);
                path.Append(i == 0 ? 'M' : 'L').Append(Number(x)).Append(' ').Append(Number(y));
            }

            path.Append('Z');
        }

        return path.ToString();
    }

    public static (double X, double Y) Down(Point point, Length height) =>
        (point.X.ToDouble(), ((Surd)height - point.Y).ToDouble());

    // A ten-thousandth of an inch is far below what a screen or printer shows.
    public static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    public static string Number(Length length) => Number(length.InInches.ToDouble());
}
