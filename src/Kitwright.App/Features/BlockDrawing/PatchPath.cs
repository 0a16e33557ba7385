using System.Globalization;
using System.Text;
using Kitwright.Geometry;
using Kitwright.Quilts;

namespace Kitwright.App.Features.BlockDrawing;

/// <summary>A patch as the path of an SVG drawing, in units of the grid, y down.</summary>
public static class PatchPath
{
    public static string Of(BlockPatch patch, int rows)
    {
        var path = new StringBuilder();
        for (var i = 0; i <= patch.Corners.Length; i++)
        {
            var corner = patch.Corners[i % patch.Corners.Length];
            var arc = i == 0 ? null : patch.Arcs.FirstOrDefault(a => a.Edge == i - 1);
            path.Append(i == 0 ? "M" : arc is null ? "L" : ArcTo(arc, patch.Corners[i - 1]));
            path.Append(CultureInfo.InvariantCulture, $"{corner.X.ToDouble():0.####} {rows - corner.Y.ToDouble():0.####}");
        }

        return path.Append('Z').ToString();
    }

    /// <summary>A closed outline of straight sides.</summary>
    public static string Of(IEnumerable<Point> corners, int rows) => $"M{string.Join('L', corners.Select(corner => $"{X(corner)} {Y(corner, rows)}"))}Z";

    public static string X(Point point) => point.X.ToDouble().ToString("0.####", CultureInfo.InvariantCulture);

    public static string Y(Point point, int rows) => (rows - point.Y.ToDouble()).ToString("0.####", CultureInfo.InvariantCulture);

    // Seams of a quarter or a half circle never run more than half round.
    private static string ArcTo(Arc arc, Point from)
    {
        var step = from - arc.Center;
        var radius = Math.Sqrt(Point.Dot(step, step).ToDouble());
        return string.Create(CultureInfo.InvariantCulture, $"A{radius:0.####} {radius:0.####} 0 0 {(arc.Clockwise ? 1 : 0)} ");
    }
}
