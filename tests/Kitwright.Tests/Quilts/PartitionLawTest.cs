using CsCheck;
using Kitwright.Geometry;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using NetTopologySuite.Geometries;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class PartitionLawTest
{
    private const double Tolerance = 1e-10;
    private static readonly GeometryFactory Factory = new();

    private static List<string> Rules(Block block) => [.. Partition.Check(block, "").Select(f => f.Rule).Order()];

    [Fact]
    public void What_is_cut_from_edge_to_edge_fills_the_block() =>
        CutBlocks.Guillotine.Sample(block => Assert.Empty(Partition.Check(block, "")), iter: 150);

    [Fact]
    public void One_corner_moved_is_a_finding() =>
        CutBlocks.OneCornerMoved.Sample(block => Assert.NotEmpty(Partition.Check(block, "")), iter: 150);

    [Fact]
    public void Turning_and_mirroring_change_no_finding() =>
        Gen.OneOf(CutBlocks.Guillotine, CutBlocks.OneCornerMoved)
            .Sample(
                block =>
                {
                    var rules = Rules(block).Distinct();
                    Assert.All(CutBlocks.Positions(block), position => Assert.Equal(rules, Rules(position).Distinct()));
                },
                iter: 40
            );

    [Fact]
    public void Order_of_patches_and_of_corners_changes_no_finding() =>
        CutBlocks.OneCornerMoved.Sample(
            block =>
            {
                var other = block with
                {
                    Patches = [.. block.Patches.Reverse().Select(p => p with { Corners = [.. p.Corners.Reverse()] })],
                };
                Assert.Equal(Rules(block).Distinct(), Rules(other).Distinct());
            },
            iter: 40
        );

    // NetTopologySuite as oracle: overlays in double, areas compared with a tolerance far below the steps moved.
    [Fact]
    public void Gaps_and_overlaps_are_those_of_the_overlay() =>
        CutBlocks.OneCornerMoved.Sample(
            block =>
            {
                var rules = Rules(block);
                var shapes = block.Patches.Select(p => Ring(new(p.Corners))).ToList();
                if (rules.Any(r => r is not ("quilt.gap" or "quilt.overlap")))
                {
                    // Not a patch at all: self-crossing, a spike or no area, which makes a ring invalid to the overlay;
                    // or a corner that stands twice, which it takes.
                    Assert.Contains(shapes, s => !s.IsValid || s.Area < Tolerance || s.Coordinates.Distinct().Count() < s.NumPoints - 1);
                    return;
                }

                var union = NetTopologySuite.Operation.Union.UnaryUnionOp.Union(shapes);
                var missing = 144 - union.Area;
                var twice = shapes.Sum(s => s.Area) - union.Area;
                Assert.Equal(missing > Tolerance, rules.Contains("quilt.gap"));
                Assert.Equal(twice > Tolerance, rules.Contains("quilt.overlap"));
            },
            iter: 150
        );

    [Fact]
    public void Areas_are_those_of_the_oracle() =>
        CutBlocks.Guillotine.Sample(
            block =>
            {
                foreach (var patch in block.Patches)
                {
                    var shape = new Kitwright.Geometry.Polygon(patch.Corners);
                    Assert.Equal(Ring(shape).Area, Math.Abs(shape.TwiceSignedArea.ToDouble()) / 2, 1e-9);
                }
            },
            iter: 50
        );

    private static NetTopologySuite.Geometries.Polygon Ring(Kitwright.Geometry.Polygon shape) =>
        Factory.CreatePolygon([
            .. shape.Corners.Append(shape.Corners[0]).Select(p => new Coordinate(p.X.ToDouble(), p.Y.ToDouble())),
        ]);
}
