using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;
using Kitwright.Print.Pictures;

namespace Kitwright.Print.Pages;

/// <summary>Where each block lies: the quilt with its rows and columns counted, and its size.</summary>
internal static class LayoutPage
{
    private const int KindsInRow = 3;
    private const double KindSize = 34;

    public static Section Of(BookletSource source)
    {
        var design = source.Plan.Design;
        var diagram = LayoutDiagram.Of(design, source.Fills.OfRole, length => source.Say("print.side", ("length", length)), source.Width, source.Height - 160);
        var alternative = source.Say("print.alt.layout", ("columns", source.Quilt.Setting.Columns), ("rows", source.Quilt.Setting.Rows));
        return Section.Titled(
            source.Say("print.layout"),
            Texts.Body(source.Say("print.layout.how", ("columns", source.Quilt.Setting.Columns), ("rows", source.Quilt.Setting.Rows))),
            diagram with { Drawing = new Group([diagram.Drawing]) { Role = Role.Figure(alternative) } },
            Kinds(source)
        );
    }

    /// <summary>Each kind of block with its number in the diagram.</summary>
    private static Stack Kinds(BookletSource source) =>
        new(
            [
                .. source
                    .Plan.Design.Blocks.Chunk(KindsInRow)
                    .Select(blocks => new Row(
                        [.. Enumerable.Range(0, KindsInRow).Select(i => new RowCell(null, i < blocks.Length ? Kind(source, blocks[i]) : new Blank(0)))],
                        12
                    )),
            ],
            6
        );

    private static Row Kind(BookletSource source, BlockDesign block)
    {
        var scale = KindSize / Math.Max(block.Width.InInches.ToDouble(), block.Height.InInches.ToDouble());
        var picture = new Group([BlockPicture.Of(block, source.Fills.OfRole, Look.Seam)])
        {
            Transform = Affine.Scale(scale, scale),
            Role = Role.Decoration,
        };
        var design = source.Plan.Design;
        var words = source.Say(
            "print.layout.kind",
            ("number", LayoutDiagram.NumberOf(design, block.Id)),
            ("name", block.Name),
            ("count", design.Placements.Count(placement => placement.Block == block.Id))
        );
        return new(
            [new(KindSize, new Picture(picture, KindSize, KindSize)), new(null, Texts.Small(words)) { Vertical = VerticalPlace.Middle }],
            8
        );
    }
}
