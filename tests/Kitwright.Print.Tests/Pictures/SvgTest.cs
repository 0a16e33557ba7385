using System.Xml.Linq;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;

namespace Kitwright.Print.Tests.Pictures;

public sealed class SvgTest
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void AQuiltIsOnePathPerRoleAndKindOfBlock()
    {
        var design = Layout.Of(Demo.Quilt);
        var svg = XDocument.Parse(QuiltPicture.Svg(design, Demo.Fill, "the quilt"));

        var expected =
            design.Blocks.Sum(block => block.Patches.Select(p => p.Role).Distinct().Count())
            + design.Patches.Select(p => p.Role).Distinct().Count();
        var paths = svg.Descendants(Svg + "path").ToList();
        Assert.Equal(expected, paths.Count);
        Assert.All(paths, path => Assert.NotNull(path.Attribute("data-role")));

        // Each patch of the design is one closed contour, so none is missing.
        var contours = paths.Sum(path => path.Attribute("d")!.Value.Count(c => c == 'Z'));
        var patches = design.Placements.Sum(p => design.Blocks.First(b => b.Id == p.Block).Patches.Length) + design.Patches.Length;
        Assert.Equal(patches, contours);
    }

    [Fact]
    public void UnderSeamsTheFabricsAreTheSameShapesAndTheSeamsGoRoundEachOfThem()
    {
        var design = Layout.Of(Demo.Quilt);
        var plain = XDocument.Parse(QuiltPicture.Svg(design, Demo.Fill, "the quilt")).Descendants(Svg + "path").Select(p => p.Attribute("d")!.Value).ToList();
        var paths = XDocument.Parse(QuiltPicture.SvgUnderSeams(design, Demo.Fill, "the quilt")).Descendants(Svg + "path").ToList();
        Assert.Equal(plain, paths.SkipLast(1).Select(p => p.Attribute("d")!.Value));
        Assert.All(paths.SkipLast(1), path => Assert.Null(path.Attribute("stroke")));
        var seams = paths[^1];
        Assert.Equal(("seams", "none"), (seams.Attribute("class")!.Value, seams.Attribute("fill")!.Value));
        Assert.Equal(Contours(plain), Contours([seams.Attribute("d")!.Value]));
    }

    private static IEnumerable<string> Contours(IEnumerable<string> paths) =>
        paths.SelectMany(d => d.Split('Z', StringSplitOptions.RemoveEmptyEntries)).Order(StringComparer.Ordinal);

    [Fact]
    public void TheViewBoxIsTheFinishedSizeInInches()
    {
        var design = Layout.Of(Demo.Quilt);
        var root = XDocument.Parse(QuiltPicture.Svg(design, Demo.Fill, "the quilt")).Root!;
        Assert.Equal(
            $"0 0 {design.Width.InInches.ToDouble()} {design.Height.InInches.ToDouble()}",
            root.Attribute("viewBox")!.Value
        );
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("the quilt", root.Attribute("aria-label")!.Value);
    }

    [Fact]
    public void NothingInADrawingRunsOrStylesItself()
    {
        var design = Layout.Of(Demo.Quilt);
        var tile = new TilePaint("OB-1", Color.White, 2, 2, [new(Outline.Circle(new(1, 1), 0.5), Paint.Of(new(200, 0, 0)), null)]);
        var svg = XDocument.Parse(QuiltPicture.Svg(design, _ => tile, "<script>alert(1)</script> & \"more\""));

        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script" or "style" or "foreignObject" or "image" or "use");
        Assert.DoesNotContain(
            svg.Descendants().Attributes(),
            a => a.Name.LocalName is "style" or "href" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)
        );
        Assert.Equal("<script>alert(1)</script> & \"more\"", svg.Root!.Attribute("aria-label")!.Value);
    }

    [Fact]
    public void APrintIsAPatternThatEveryPathOfItsFabricUses()
    {
        var tile = new TilePaint("OB-1", Color.White, 2, 3, [new(Outline.Circle(new(1, 1), 0.5), Paint.Of(new(200, 0, 0)), null)]);
        var square = new Shape(Outline.Rectangle(new(0, 0, 10, 10)), tile, null);
        var drawing = new Group([square, square]) { Transform = Affine.Scale(4, 4) };
        var svg = XDocument.Parse(SvgCanvas.Write(drawing, new(new(0, 0, 40, 40), "cloth", "p-")));

        var pattern = Assert.Single(svg.Descendants(Svg + "pattern"));
        Assert.Equal("8", pattern.Attribute("width")!.Value);
        Assert.Equal("12", pattern.Attribute("height")!.Value);
        var filled = svg.Root!.Elements(Svg + "path").ToList();
        Assert.Equal(2, filled.Count);
        Assert.All(filled, path => Assert.Equal($"url(#{pattern.Attribute("id")!.Value})", path.Attribute("fill")!.Value));
    }

    [Fact]
    public void PatchesOfABlockCarryTheirIds()
    {
        var block = Layout.Of(Demo.Quilt).Blocks[0];
        var svg = XDocument.Parse(BlockPicture.Svg(block, Demo.Fill, "a block"));
        Assert.Equal(
            block.Patches.Select(p => p.Id.Value),
            svg.Descendants(Svg + "path").Select(path => path.Attribute("data-id")!.Value)
        );
    }
}
