using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>
/// A block as a foundation at its true size: mirrored, because cloth is sewn to its back, numbered in the order of
/// sewing, a seam allowance round it.
/// </summary>
public static class FoundationPicture
{
    private const double PointsPerInch = 72;

    /// <param name="order">Indices of the block's patches in the order of sewing.</param>
    public static Picture Of(BlockDesign block, ImmutableArray<int> order, double seam)
    {
        double width = block.Width.InInches.ToDouble(),
            height = block.Height.InInches.ToDouble(),
            whole = (width + (2 * seam)) * PointsPerInch,
            high = (height + (2 * seam)) * PointsPerInch;
        var toPage = new Affine(-PointsPerInch, 0, 0, -PointsPerInch, (width + seam) * PointsPerInch, (height + seam) * PointsPerInch);
        var nodes = ImmutableArray.CreateBuilder<Node>();
        nodes.Add(new Shape(Outline.Rectangle(new(0, 0, whole, high)), null, Look.Dashes));
        for (var i = 0; i < order.Length; i++)
        {
            var outline = Outline.Of(block.Patches[order[i]].Shape).Moved(toPage);
            var word = SetText.Of((i + 1).ToString(CultureInfo.InvariantCulture), Look.Label);
            var middle = Middle.Of(outline);
            nodes.Add(new Shape(outline, null, Look.Edge));
            nodes.Add(new TextLine(word, new(middle.X - (word.Width / 2), middle.Y + (Look.Label.CapHeight / 2))));
        }

        return new(new Group(nodes.ToImmutable()), whole, high);
    }
}
