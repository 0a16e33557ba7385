using System.Collections.Immutable;
using Kitwright.Accuracy;
using Kitwright.Measure;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>
/// How blocks come out: how many sides are how far off, by sixty-fourths of an inch, and one block out of true, drawn
/// sixteen times as far off as it is.
/// </summary>
public static class AccuracyPicture
{
    private const double Plot = 230;
    private const double High = 110;
    private const double Square = 96;
    private const double Gap = 34;
    private const double Exaggerated = 16;

    /// <summary>Sixty-fourths of an inch either way that are drawn; the outermost bars hold what lies beyond.</summary>
    private const int Reach = 16;

    /// <param name="side">The block's finished side in inches.</param>
    /// <param name="metric">Whether the marks are millimeters.</param>
    public static Picture Of(Sewn sewn, double side, bool metric = false)
    {
        var nodes = ImmutableArray.CreateBuilder<Node>();
        nodes.AddRange(Bars(sewn));
        nodes.AddRange(Marks(metric));
        nodes.Add(Group.At(Plot + Gap, 4, OutOfTrue(sewn, side)));
        return new(new Group(nodes.ToImmutable()), Plot + Gap + Square + 24, High + 16);
    }

    private static IEnumerable<Node> Bars(Sewn sewn)
    {
        var middle = sewn.Bins.Length / 2;
        var bins = new long[(2 * Reach) + 1];
        for (var i = 0; i < sewn.Bins.Length; i++)
        {
            bins[Math.Clamp(i - middle, -Reach, Reach) + Reach] += sewn.Bins[i];
        }

        double most = Math.Max(1, bins.Max()),
            wide = Plot / bins.Length;
        for (var i = 0; i < bins.Length; i++)
        {
            var height = bins[i] / most * (High - 8);
            if (height > 0)
            {
                // What is off by more than a sixteenth stands out by its outline, not by color alone.
                var far = Math.Abs(i - Reach) > 4;
                var box = new Box((i * wide) + 0.5, High - height, wide - 1, height);
                yield return new Shape(Outline.Rectangle(box), Paint.Of(far ? Look.Wash : Look.Pencil), far ? new(Look.Accent, 0.8) : null);
            }
        }

        yield return new Shape(Outline.Line(new(0, High), new(Plot, High)), null, Look.Edge);
    }

    private static IEnumerable<Node> Marks(bool metric)
    {
        foreach (var steps in new[] { -2, -1, 0, 1, 2 })
        {
            // An eighth of an inch, or three millimeters, to a step.
            var step = metric ? Length.Millimeters(3) : Length.Inches(0, 1, 8);
            var x = Plot * (Reach + (steps * step.InInches.ToDouble() * 64) + 0.5) / ((2 * Reach) + 1);
            var by = metric ? LengthText.Mixed((step * Math.Abs(steps)).InMillimeters) : LengthText.Inches(step * Math.Abs(steps));
            var word = SetText.Of(steps < 0 ? "−" + by : steps > 0 ? "+" + by : by, Look.Small);
            yield return new Shape(Outline.Line(new(x, High), new(x, High + 3)), null, Look.Edge);
            yield return new TextLine(word, new(Math.Clamp(x - (word.Width / 2), 0, Plot - word.Width), High + 14));
        }
    }

    /// <summary>As designed in dashes, and as it may come out: two deviations off, one way more than the other.</summary>
    private static Group OutOfTrue(Sewn sewn, double side)
    {
        var scale = Square / side;
        double Off(double deviations) => Math.Clamp((sewn.Block.Mean + (deviations * sewn.Block.Deviation)) * Exaggerated * scale, -Square / 3, 20);
        double right = Square + Off(1),
            rightBelow = Square + Off(-1),
            top = -Off(-1.5),
            topRight = -Off(0.5);
        return new(
            [
                new Shape(
                    Outline.Polygon(new(0, top), new(right, topRight), new(rightBelow, Square), new(0, Square)),
                    Paint.Of(Look.Wash),
                    new(Look.Accent, 1.2)
                ),
                new Shape(Outline.Rectangle(new(0, 0, Square, Square)), null, new(Look.Ink, 0.8, 3)),
            ]
        );
    }
}
