using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;

namespace Kitwright.Print.Pictures;

/// <summary>The backing with the seams between its panels, and the quilt top that lies on it.</summary>
public static class BackingPicture
{
    /// <param name="width">Of the drawing, in points.</param>
    public static Picture Of(QuiltPlan plan, double width)
    {
        var backing = plan.Backing;
        double inchesWide = backing.Width.InInches.ToDouble(),
            inchesHigh = backing.Height.InInches.ToDouble();
        var scale = width / inchesWide;
        var height = inchesHigh * scale;
        var overhang = backing.Overhang.InInches.ToDouble() * scale;
        var nodes = ImmutableArray.CreateBuilder<Node>();
        nodes.Add(new Shape(Outline.Rectangle(new(0, 0, width, height)), Paint.Of(Look.Wash), Look.Edge));
        for (var i = 0; i < backing.Seams; i++)
        {
            // With one panel halved, half a panel lies outside of the first seam and of the last.
            var share = (i + (backing.HalvesOutside ? 0.5 : 1)) / backing.Panels;
            var seam = backing.Across
                ? Outline.Line(new(0, height * share), new(width, height * share))
                : Outline.Line(new(width * share, 0), new(width * share, height));
            nodes.Add(new Shape(seam, null, Look.Edge));
        }

        var top = new Box(overhang, overhang, width - (2 * overhang), height - (2 * overhang));
        nodes.Add(new Shape(Outline.Rectangle(top), null, Look.Dashes));
        return new(new Group(nodes.ToImmutable()), width, height);
    }
}
