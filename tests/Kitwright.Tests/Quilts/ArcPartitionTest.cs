using System.Collections.Immutable;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class ArcPartitionTest
{
    private static readonly Length Side = Length.Inches(6);

    private static Block Of(params ImmutableArray<BlockPatch> patches) => new("curve", "curve", Side, Side, new(1, 1), patches);

    private static BlockPatch Patch(string id, ImmutableArray<Point> corners, params ImmutableArray<Arc> arcs) =>
        new(id, "light", corners, arcs);

    private static IEnumerable<string> Rules(Block block) => Partition.Check(block, "").Select(f => f.Rule).Distinct();

    /// <summary>A quarter circle of a radius about the lower left corner, and the rest of the block.</summary>
    private static Block Quarter(Surd radius) =>
        Of(
            Patch("1", [new(0, 0), new(radius, 0), new(0, radius)], new Arc(1, new(0, 0), false)),
            Patch("2", [new(radius, 0), new(6, 0), new(6, 6), new(0, 6), new(0, radius)], new Arc(4, new(0, 0), true))
        );

    [Fact]
    public void Quarter_circle_and_its_rest_fill_the_block_at_any_radius() =>
        Gen.Int[1, 95].Sample(k => Assert.Empty(Partition.Check(Quarter(new Rational(k, 16)), "")), iter: 60);

    [Fact]
    public void Radius_may_be_a_root() => Assert.Empty(Partition.Check(Quarter(Surd.OfRoot2(3)), ""));

    [Fact]
    public void Curve_is_matched_in_all_eight_positions() =>
        Assert.All(CutBlocks.Positions(Quarter(4)), block => Assert.Empty(Partition.Check(block, "")));

    // A corner of a neighbor on the arc splits it: (12/5, 16/5) lies on the circle of radius 4.
    [Fact]
    public void Neighbors_may_meet_on_the_curve()
    {
        Point meet = new(new Rational(12, 5), new Rational(16, 5)),
            center = new(0, 0);
        var block = Of(
            Patch("1", [new(0, 0), new(4, 0), new(0, 4)], new Arc(1, center, false)),
            Patch("2", [new(4, 0), new(6, 0), new(6, 6), meet], new Arc(3, center, true)),
            Patch("3", [meet, new(6, 6), new(0, 6), new(0, 4)], new Arc(3, center, true))
        );
        Assert.Empty(Partition.Check(block, ""));
    }

    [Fact]
    public void Curves_of_two_centers_do_not_match()
    {
        var block = Quarter(4);
        var second = block.Patches[1] with { Arcs = [new Arc(4, new(4, 4), false)] };
        Assert.Equal(["quilt.arc.alone"], Rules(block with { Patches = block.Patches.SetItem(1, second) }));
    }

    // The chord from (0, 1) to (6, 1) cuts through an arc about (3, 0) of radius 3.
    [Fact]
    public void Straight_side_through_an_arc_is_a_crossing()
    {
        var patch = Patch("1", [new(0, 0), new(6, 0), new(6, 1), new(0, 1)], new Arc(0, new(3, 0), true));
        Assert.Equal(["quilt.crossing"], Rules(Of(patch)));
    }

    // The same arc about a center a little lower stays below the chord, and the patch is a patch.
    [Fact]
    public void Straight_side_beside_an_arc_is_none()
    {
        var patch = Patch("1", [new(0, 0), new(6, 0), new(6, 1), new(0, 1)], new Arc(0, new(3, -6), true));
        Assert.DoesNotContain("quilt.crossing", Rules(Of(patch)));
    }

    [Fact]
    public void Two_arcs_that_cross_are_a_crossing()
    {
        // Two half circles of radius 2 over one side each, their centers 2 apart.
        var patch = Patch("1", [new(0, 2), new(4, 2), new(4, 4), new(0, 4)], new Arc(0, new(2, 2), true), new Arc(2, new(2, 4), true));
        Assert.Equal(["quilt.crossing"], Rules(Of(patch)));
    }

    // Arcs and straight sides in one block: the gap lies beside straight sides only, and under an arc's chord.
    [Fact]
    public void Gap_under_a_curve_is_a_gap()
    {
        var block = Quarter(4);
        var less = block.Patches[0] with { Corners = [new(1, 0), new(4, 0), new(0, 4), new(0, 1), new(1, 1)] };
        Assert.Equal(["quilt.gap"], Rules(block with { Patches = block.Patches.SetItem(0, less) }));
    }

    [Fact]
    public void Patch_laid_into_a_curve_overlaps_it()
    {
        var block = Quarter(4);
        var more = Patch("3", [new(1, 1), new(2, 1), new(2, 2), new(1, 2)]);
        Assert.Equal(["quilt.overlap"], Rules(block with { Patches = block.Patches.Add(more) }));
    }
}
