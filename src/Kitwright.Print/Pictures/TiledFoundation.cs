using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pages;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>What one sheet shows of a foundation larger than the sheet; each section bears its number on every sheet that shows it.</summary>
internal static class TiledFoundation
{
    private const double PointsPerInch = 72;

    /// <summary>Of a section that shows less than this, in points each way, the number would not stand inside it.</summary>
    private const double Least = 12;

    public static Picture Of(BlockDesign block, ImmutableArray<int> order, double seam, SheetTile tile)
    {
        double width = block.Width.InInches.ToDouble(),
            height = block.Height.InInches.ToDouble();
        var window = tile.Window;
        // Mirrored, as the whole foundation is.
        Place ToPage(Geometry.Point p) =>
            new(((width + seam - p.X.ToDouble()) * PointsPerInch) - window.Left, ((height + seam - p.Y.ToDouble()) * PointsPerInch) - window.Top);
        var nodes = ImmutableArray.CreateBuilder<Node>();
        double whole = (width + (2 * seam)) * PointsPerInch,
            high = (height + (2 * seam)) * PointsPerInch;
        Place[] around = [new(0, 0), new(whole, 0), new(whole, high), new(0, high)];
        nodes.AddRange(Lines([.. around.Select(p => new Place(p.X - window.Left, p.Y - window.Top))], window, Look.Dashes));
        var joins = SheetJoin.Of(tile).ToArray();
        for (var i = 0; i < order.Length; i++)
        {
            Place[] corners = [.. block.Patches[order[i]].Shape.Corners.Select(ToPage)];
            nodes.AddRange(Lines(corners, window, Look.Edge));
            if (Seen(corners, window) is { } seen)
            {
                var word = SetText.Of((i + 1).ToString(CultureInfo.InvariantCulture), Look.Label);
                var at = joins.Aggregate(seen, (place, join) => join.BesideNumbers(word, place));
                nodes.Add(new TextLine(word, new(at.X - (word.Width / 2), at.Y + (Look.Label.CapHeight / 2))));
            }
        }

        return new(new Group([.. nodes, .. TiledTemplate.Joins(tile)]), window.Width, window.Height);
    }

    private static IEnumerable<Node> Lines(Place[] corners, Box window, Stroke stroke) =>
        corners.Select((corner, i) => TiledTemplate.Part(corner, corners[(i + 1) % corners.Length], window, stroke)).OfType<Node>();

    /// <summary>The middle of what the sheet shows of a convex outline; null for a sliver or nothing.</summary>
    private static Place? Seen(Place[] corners, Box window)
    {
        IReadOnlyList<Place> rest = corners;
        foreach (var (x, y, most) in new[] { (1.0, 0.0, window.Width), (-1, 0, 0), (0, 1, window.Height), (0, -1, 0) })
        {
            rest = Clipped(rest, p => most - (x * p.X) - (y * p.Y));
        }

        return rest.Count > 2 && rest.Max(p => p.X) - rest.Min(p => p.X) > Least && rest.Max(p => p.Y) - rest.Min(p => p.Y) > Least
            ? new(rest.Average(p => p.X), rest.Average(p => p.Y))
            : null;
    }

    private static List<Place> Clipped(IReadOnlyList<Place> corners, Func<Place, double> inside)
    {
        var kept = new List<Place>();
        for (var i = 0; i < corners.Count; i++)
        {
            Place p = corners[i],
                q = corners[(i + 1) % corners.Count];
            double a = inside(p),
                b = inside(q);
            if (a >= 0)
            {
                kept.Add(p);
            }

            if (a * b < 0)
            {
                kept.Add(p + ((q - p) * (a / (a - b))));
            }
        }

        return kept;
    }
}
