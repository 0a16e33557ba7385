using System.Collections.Immutable;
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
        foreach (var join in SheetJoin.Of(tile))
        {
            yield return new Shape(Outline.Line(join.From, join.To), null, Look.Seam);
            yield return new Shape(
                Outline.Polygon(
                    join.Middle - (join.Along * SheetJoin.Diamond),
                    join.Middle + (join.Inward * SheetJoin.Diamond),
                    join.Middle + (join.Along * SheetJoin.Diamond)
                ),
                Paint.Of(Look.Wash),
                Look.Edge
            );
            yield return new TextLine(join.Word, new(join.At.X - (join.Word.Width / 2), join.At.Y + (join.Word.Style.CapHeight / 2)));
        }
    }

    private static TextLine Label(TemplatePiece piece, SheetTile tile)
    {
        var word = SetText.Of(piece.Label, Look.Heading);
        return new(word, new((tile.Window.Width - word.Width) / 2, (tile.Window.Height + word.Style.CapHeight) / 2));
    }
}
