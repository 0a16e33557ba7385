using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>The quilt with rows and columns counted at its edge, kinds of blocks numbered, and its size.</summary>
public static class LayoutDiagram
{
    private const double Margin = 24;

    // The height stands beside the quilt, in a level line.
    private const double RightMargin = 52;

    /// <summary>As large as fits, in points.</summary>
    /// <param name="size">A length with its unit, for people.</param>
    public static Picture Of(Design design, Func<string, Paint> fill, Func<Length, string> size, double width, double height)
    {
        double inchesWide = design.Width.InInches.ToDouble(),
            inchesHigh = design.Height.InInches.ToDouble();
        var scale = Math.Min((width - Margin - RightMargin) / inchesWide, (height - (2 * Margin)) / inchesHigh);
        var toPage = QuiltPicture.Upright(design.Height).Then(Affine.Scale(scale, scale));
        var nodes = ImmutableArray.CreateBuilder<Node>();
        nodes.Add(new Group([QuiltPicture.Of(design, fill, Look.Seam)]) { Transform = Affine.Scale(scale, scale) });
        nodes.AddRange(Kinds(design, toPage));
        nodes.AddRange(Counts(design, toPage));
        nodes.AddRange(Sizes(design, size, inchesWide * scale, inchesHigh * scale));
        return new(
            Group.At(Margin, Margin, nodes.ToImmutable()),
            (inchesWide * scale) + Margin + RightMargin,
            (inchesHigh * scale) + (2 * Margin)
        )
        {
            Horizontal = HorizontalPlace.Center,
        };
    }

    /// <summary>The number under which a kind of block stands in the diagram, from 1.</summary>
    public static int NumberOf(Design design, string block) =>
        design.Blocks.Select((b, i) => (b.Id, i)).First(pair => pair.Id == block).i + 1;

    // One kind needs no number.
    private static IEnumerable<Node> Kinds(Design design, Affine toPage) =>
        design.Blocks.Length < 2
            ? []
            : design.Placements.Select(placement =>
                Chip.Of(Number(NumberOf(design, placement.Block)), Look.Label, toPage.Apply(Center(design, placement))).Drawing
            );

    // Rows and columns by where the centers lie: equal heights are a row, counted from the top.
    private static IEnumerable<Node> Counts(Design design, Affine toPage)
    {
        var centers = design.Placements.Select(p => Center(design, p)).ToArray();
        var columns = centers.Select(c => Math.Round(c.X, 6)).Distinct().Order().ToArray();
        var rows = centers.Select(c => Math.Round(c.Y, 6)).Distinct().OrderDescending().ToArray();
        for (var i = 0; i < columns.Length; i++)
        {
            yield return Mark(Number(i + 1), new(toPage.Apply(new(columns[i], 0)).X, -10));
        }

        for (var i = 0; i < rows.Length; i++)
        {
            yield return Mark(Number(i + 1), new(-12, toPage.Apply(new(0, rows[i])).Y));
        }
    }

    private static IEnumerable<Node> Sizes(Design design, Func<Length, string> size, double width, double height) =>
        [
            Mark(size(design.Width), new(width / 2, height + 12)),
            Mark(size(design.Height), new(width + 26, height / 2)),
        ];

    private static Place Center(Design design, Placement placement)
    {
        var block = design.Blocks.First(b => b.Id == placement.Block);
        var half = new Rational(1, 2);
        var center = placement.Motion.Apply(new Geometry.Point(block.Width * half, block.Height * half));
        return new(center.X.ToDouble(), center.Y.ToDouble());
    }

    private static TextLine Mark(string word, Place center)
    {
        var text = SetText.Of(word, Look.Small);
        return new(text, new(center.X - (text.Width / 2), center.Y + (Look.Small.CapHeight / 2)));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
