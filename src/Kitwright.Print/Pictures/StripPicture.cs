using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;

namespace Kitwright.Print.Pictures;

/// <summary>
/// Cloth unrolled: strips to scale, one below the other, with their sub-cuts and what is trimmed. Pieces carry the ids
/// of their class, sub-cuts their own.
/// </summary>
/// <param name="Scale">Points, or user units, to the inch of cloth.</param>
public sealed record StripPicture(ClothPlan Plan, Paint Fabric, double Scale)
{
    // Cuts through dark cloth are drawn light.
    private readonly Stroke cutLine = Fabric is FlatPaint { Color.Luminance: < 0.18 } ? new(Look.Paper, 0.6) : Look.Edge;

    private readonly Dictionary<PathId, ClothDemand> demand = Plan
        .Demand.GroupBy(d => d.Piece)
        .ToDictionary(same => same.Key, same => same.First());

    /// <summary>Which ways round the print may lie: an arrow shows where its up is.</summary>
    public PrintDirection Direction { get; init; }

    public double Width => Plan.Terms.UsableWidth.InInches.ToDouble() * Scale;

    public double HeightOf(StripCut strip) => strip.Height.InInches.ToDouble() * Scale;

    /// <summary>One of the equal strips, its upper left corner at the origin.</summary>
    /// <param name="labelAll">Every piece has its label; else the first of each sub-cut only.</param>
    public Group One(StripCut strip, bool labelAll)
    {
        double x = 0,
            height = HeightOf(strip);
        var cloth = Outline.Rectangle(new(0, 0, Width, height));
        var nodes = ImmutableArray.CreateBuilder<Node>();
        nodes.Add(new Shape(cloth, Paint.Of(Look.Paper), null) { Class = "leftover" });
        foreach (var cut in strip.SubCuts)
        {
            var width = cut.Width.InInches.ToDouble() * Scale;
            nodes.Add(SubCut(cut, x, width, height, labelAll));
            x += width * cut.Times;
        }

        nodes.Add(Hatch.Over(new(x, 0, Width - x, height)));
        nodes.Add(new Shape(cloth, null, Look.Edge) { Class = "edge" });
        // Beside the strip, where it covers no label.
        nodes.AddRange(PrintArrow.At(new(-6, height / 2), Math.Min(height, 10), Direction));
        return new(nodes.ToImmutable()) { Id = strip.Id, Class = "strip" };
    }

    /// <summary>All of the equal strips, for a screen; user units are points.</summary>
    public string Svg(StripCut strip, string label, string keyPrefix = "")
    {
        var height = HeightOf(strip);
        var strips = Enumerable.Range(0, strip.Times).Select(i => (Node)Group.At(0, i * height, One(strip, labelAll: i == 0)));
        return SvgCanvas.Write(new Group([.. strips]), new(new(-1, -1, Width + 2, (height * strip.Times) + 2), label, keyPrefix));
    }

    private Group SubCut(SubCut cut, double x, double width, double height, bool labelAll)
    {
        var nodes = ImmutableArray.CreateBuilder<Node>();
        for (var i = 0; i < cut.Times; i++)
        {
            // The stack begins at the lower edge of the strip.
            var bottom = height;
            foreach (var stacked in cut.Stack)
            {
                var (pieceWidth, pieceHeight) = Size(stacked);
                for (var k = 0; k < stacked.Times; k++)
                {
                    bottom -= pieceHeight;
                    nodes.Add(Piece(stacked, new(x + (i * width), bottom, pieceWidth, pieceHeight)));
                }
            }
        }

        // Labels go over all pieces, for one may be wider than its piece.
        var labels = Labels(cut, x, width, height, labelAll);
        return new([.. nodes, .. labels]) { Id = cut.Id, Class = "cut" };
    }

    private Shape Piece(StackedPiece stacked, Box box) =>
        new(Outline.Rectangle(box), Fabric, cutLine) { Id = stacked.Piece, Class = "piece" };

    private IEnumerable<Node> Labels(SubCut cut, double x, double width, double height, bool labelAll)
    {
        var bottom = height;
        foreach (var stacked in cut.Stack)
        {
            var (pieceWidth, pieceHeight) = Size(stacked);
            var label = demand[stacked.Piece].Label;
            var fits = Chip.Size(label, Look.Label).Width <= pieceWidth - 1;
            var middle = bottom - (pieceHeight * stacked.Times / 2);
            for (var i = 0; i < (labelAll && fits ? cut.Times : 1); i++)
            {
                // Where a piece is too narrow for its label, one label stands for the whole run.
                var center = fits ? x + (i * width) + (pieceWidth / 2) : x + (cut.Times * width / 2);
                yield return Chip.Of(label, Look.Label, new(center, middle)).Drawing;
            }

            bottom -= pieceHeight * stacked.Times;
        }
    }

    private (double Width, double Height) Size(StackedPiece stacked)
    {
        Length width = demand[stacked.Piece].Width,
            height = demand[stacked.Piece].Height;
        var (across, along) = stacked.Turned ? (height, width) : (width, height);
        return (across.InInches.ToDouble() * Scale, along.InInches.ToDouble() * Scale);
    }
}
