using System.Collections.Immutable;
using Kitwright.Pressing;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;
using Kitwright.Sewing;

namespace Kitwright.Print.Pictures;

/// <summary>A template at its true size: cut on the full line, sew on the dashed one, the arrow along the grain.</summary>
public static class TemplatePicture
{
    private const double PointsPerInch = 72;

    public static Picture Of(TemplatePiece piece)
    {
        var (low, high) = piece.Extent;
        var toPage = new Affine(PointsPerInch, 0, 0, -PointsPerInch, -low.X * PointsPerInch, high.Y * PointsPerInch);
        double width = (high.X - low.X) * PointsPerInch,
            height = (high.Y - low.Y) * PointsPerInch;
        Outline Of(ImmutableArray<Spot> line) => Outline.Polygon([.. line.Select(p => toPage.Apply(new(p.X, p.Y)))]);
        var sewn = Of(piece.Sewn);
        var middle = Middle.Of(sewn);
        var word = SetText.Of(piece.Label, Look.Heading);
        return new(
            new Group(
                [
                    new Shape(Of(piece.Cut), null, Look.Edge),
                    new Shape(sewn, null, Look.Dashes),
                    .. piece.Marks.Select(m => Mark(m, toPage)),
                    .. Grain(middle, height),
                    new TextLine(word, new(middle.X - (word.Width / 2), middle.Y + (word.Style.CapHeight / 2))),
                ]
            ),
            width,
            height
        );
    }

    private static Shape Mark(TemplateMark mark, Affine toPage)
    {
        const double Long = 0.15;
        var end = mark.At + (mark.Outward * Long);
        return new(Outline.Line(toPage.Apply(new(mark.At.X, mark.At.Y)), toPage.Apply(new(end.X, end.Y))), null, Look.Edge);
    }

    // Up and down in the block, beside the label, as long as there is room for.
    private static IEnumerable<Node> Grain(Place middle, double height)
    {
        var half = Math.Min(26, height / 6);
        if (half > 8)
        {
            yield return Arrow.Of(new(middle.X + 16, middle.Y + half), new(middle.X + 16, middle.Y - half), both: true);
        }
    }
}
