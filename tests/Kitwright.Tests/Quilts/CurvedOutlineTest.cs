using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class CurvedOutlineTest
{
    [Fact]
    public void A_quarter_circle_is_drawn_with_the_area_of_one()
    {
        var quilt = (NewQuilt.With(BlockBook.Find("drunkards-path")!, LengthUnit.Inch) with { BlockWidth = Length.Inches(6) }).Make().Value!;

        var patches = Layout.Of(quilt).Blocks.Single().Patches;

        Assert.All(patches, patch => Assert.NotNull(patch.Curved));
        // The quarter circle has its center in a corner of the block; its radius is the arc's end.
        var arc = quilt.Blocks[0].Patches.SelectMany(p => p.Arcs.Select(a => (p, a))).First();
        var radius = Kitwright.Geometry.Point.Dot(arc.p.Corners[arc.a.Edge] - arc.a.Center, arc.p.Corners[arc.a.Edge] - arc.a.Center);
        var areas = patches.Select(p => p.Drawn.TwiceSignedArea.ToDouble() / 2).Order().ToArray();
        var quarter = Math.PI * radius.ToDouble() / 4;
        // Chords of three degrees miss 1 part in 2,000 of the circle.
        Assert.Contains(areas, area => Math.Abs(area - quarter) < quarter / 2000);
        Assert.Equal(36, areas.Sum(), 6);
    }

    [Fact]
    public void A_straight_patch_is_drawn_as_it_is() =>
        Assert.All(
            Layout.Of(NewQuilt.With(BlockBook.Find("ohio-star")!, LengthUnit.Inch).Make().Value!).Blocks.Single().Patches,
            patch => Assert.Same(patch.Shape, patch.Drawn)
        );
}
