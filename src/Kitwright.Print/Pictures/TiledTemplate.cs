using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Pressing;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pages;
using Kitwright.Print.Text;
using Kitwright.Sewing;

namespace Kitwright.Print.Pictures;

/// <summary>
/// What one sheet shows of a template larger than the sheet. A thin line is where it is joined to the next: the two
/// numbers at the half diamond are those of the sheets that meet there.
/// </summary>
internal static class TiledTemplate
{
    private const double PointsPerInch = 72;
    private const double Diamond = 7;
    private const double MarkLength = 0.15;

    public static Picture Of(TemplatePiece piece, SheetTile tile)
    {
        var (low, high) = piece.Extent;
        var window = tile.Window;
        Place ToPage(Spot p) => new(((p.X - low.X) * PointsPerInch) - window.Left, ((high.Y - p.Y) * PointsPerInch) - window.Top);
        Node[] Line(ImmutableArray<Spot> line, Stroke stroke) =>
            [.. line.Select((p, i) => Part(ToPage(p), ToPage(line[(i + 1) % line.Length]), window, stroke)).OfType<Node>()];
        return new(
            new Group(
                [
                    .. Line(piece.Cut, Look.Edge),
                    .. Line(piece.Sewn, Look.Dashes),
                    .. piece.Marks.Select(m => Part(ToPage(m.At), ToPage(m.At + (m.Outward * MarkLength)), window, Look.Edge)).OfType<Node>(),
                    .. Joins(tile),
                    Label(piece, tile),
                ]
            ),
            window.Width,
            window.Height
        );
    }

    /// <summary>What of a line lies on the sheet: clipped to its four sides one after another (Liang and Barsky).</summary>
    internal static Shape? Part(Place from, Place to, Box window, Stroke stroke)
    {
        var step = to - from;
        double enter = 0,
            leave = 1;
        foreach (var (away, room) in new[] { (-step.X, from.X), (step.X, window.Width - from.X), (-step.Y, from.Y), (step.Y, window.Height - from.Y) })
        {
            if (away == 0)
            {
                if (room < 0)
                {
                    return null;
                }
            }
            else if (away < 0)
            {
                enter = Math.Max(enter, room / away);
            }
            else
            {
                leave = Math.Min(leave, room / away);
            }
        }

        return enter < leave ? new(Outline.Line(from + (step * enter), from + (step * leave)), null, stroke) : null;
    }

    /// <summary>Where the sheet is joined to its neighbors.</summary>
    internal static IEnumerable<Node> Joins(SheetTile tile)
    {
        double width = tile.Window.Width,
            height = tile.Window.Height;
        (bool There, int Other, Place From, Place To, Place In)[] sides =
        [
            (tile.Column > 0, tile.Number - 1, new(0, 0), new(0, height), new(1, 0)),
            (tile.Column < tile.Across - 1, tile.Number + 1, new(width, 0), new(width, height), new(-1, 0)),
            (tile.Row > 0, tile.Number - tile.Across, new(0, 0), new(width, 0), new(0, 1)),
            (tile.Row < tile.Down - 1, tile.Number + tile.Across, new(0, height), new(width, height), new(0, -1)),
        ];
        foreach (var (_, other, from, to, inward) in sides.Where(side => side.There))
        {
            var along = new Place(inward.Y, inward.X);
            var middle = (from + to) * 0.5;
            yield return new Shape(Outline.Line(from, to), null, Look.Seam);
            yield return new Shape(
                Outline.Polygon(middle - (along * Diamond), middle + (inward * Diamond), middle + (along * Diamond)),
                Paint.Of(Look.Wash),
                Look.Edge
            );
            int first = Math.Min(tile.Number, other),
                second = Math.Max(tile.Number, other);
            var word = SetText.Of(string.Create(CultureInfo.InvariantCulture, $"{first}–{second}"), Look.Label);
            var at = middle + (inward * (Diamond + 4 + (inward.X == 0 ? word.Style.CapHeight / 2 : word.Width / 2)));
            yield return new TextLine(word, new(at.X - (word.Width / 2), at.Y + (word.Style.CapHeight / 2)));
        }
    }

    private static TextLine Label(TemplatePiece piece, SheetTile tile)
    {
        var word = SetText.Of(piece.Label, Look.Heading);
        return new(word, new((tile.Window.Width - word.Width) / 2, (tile.Window.Height + word.Style.CapHeight) / 2));
    }
}
