using CsCheck;
using Kitwright.Geometry;
using Kitwright.Pressing;
using Kitwright.Sewing;
using Kitwright.Tests.Quilts;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Xunit;

namespace Kitwright.Tests.Sewing;

/// <summary>Lines to cut on against the buffers of NetTopologySuite, for the patches of random blocks.</summary>
public sealed class SeamOffsetTest
{
    private const double Seam = 0.25;

    // Buffers are laid out in floating point.
    private const double Tolerance = 1e-6;
    private static readonly GeometryFactory Factory = new();
    private static readonly BufferParameters Mitered = new(8, EndCapStyle.Round, JoinStyle.Mitre, mitreLimit: 1_000);

    [Fact]
    public void No_point_of_the_patch_is_nearer_to_the_cut_than_the_allowance_and_no_cut_lies_beyond_the_miters() =>
        CutBlocks.Guillotine.Sample(
            block =>
            {
                foreach (var patch in block.Patches)
                {
                    var sewn = new Kitwright.Geometry.Polygon(patch.Corners).CounterClockwise().Corners.Select(Spot.Of).ToArray();
                    var cut = SeamOffset.Of([.. sewn], Seam);
                    // Buffers of chords lie inside the true round ones.
                    Assert.True(Ring(cut).Buffer(Tolerance).Covers(Ring(sewn).Buffer(Seam)));
                    Assert.True(BufferOp.Buffer(Ring(sewn), Seam + Tolerance, Mitered).Buffer(Tolerance).Covers(Ring(cut)));
                }
            },
            iter: 100
        );

    /// <summary>Where no corner is sharper than a right angle nothing is blunted: both are the same shape.</summary>
    [Fact]
    public void Rectangles_get_the_mitered_buffer() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[1, 200])
            .Sample(
                (width, height) =>
                {
                    Spot[] sewn = [new(0, 0), new(width / 16d, 0), new(width / 16d, height / 16d), new(0, height / 16d)];
                    var difference = Ring(SeamOffset.Of([.. sewn], Seam)).SymmetricDifference(BufferOp.Buffer(Ring(sewn), Seam, Mitered));
                    Assert.True(difference.Area < Tolerance);
                },
                iter: 100
            );

    private static NetTopologySuite.Geometries.Polygon Ring(IEnumerable<Spot> line)
    {
        var corners = line.Select(p => new Coordinate(p.X, p.Y)).ToList();
        return Factory.CreatePolygon([.. corners, corners[0]]);
    }
}
