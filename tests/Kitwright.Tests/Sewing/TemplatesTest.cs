using System.Collections.Immutable;
using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Pressing;
using Kitwright.Quilts;
using Kitwright.Sewing;
using Kitwright.Tests.Pressing;
using Xunit;

namespace Kitwright.Tests.Sewing;

public sealed class TemplatesTest
{
    private static double Area(ImmutableArray<Spot> line) => line.Select((p, i) => Spot.Cross(p, line[(i + 1) % line.Length])).Sum() / 2;

    /// <summary>Finished plus 1/2 in each way ([KC], [GMG]).</summary>
    [Fact]
    public void A_square_grows_by_a_seam_on_every_side()
    {
        var cut = SeamOffset.Of([new(0, 0), new(3, 0), new(3, 3), new(0, 3)], 0.25);
        Assert.Equal(4, cut.Length);
        Assert.Equal(3.5 * 3.5, Area(cut), 9);
    }

    /// <summary>
    /// A half-square triangle of 3 in: each sharp corner reaches 3/8 in past its leg at most (each 45 degree corner takes
    /// 3/8 in, [SPQ]; 1/4 · (1 + √2) = 0.604 in unblunted, own arithmetic), and blunting leaves two corners for one.
    /// </summary>
    [Fact]
    public void Sharp_points_are_blunted()
    {
        var cut = SeamOffset.Of([new(0, 0), new(3, 0), new(0, 3)], 0.25);
        Assert.Equal(5, cut.Length);
        Assert.InRange(cut.Max(p => p.X), 3.25, 3.375);
        Assert.Equal(-0.25, cut.Min(p => p.X), 9);
    }

    [Fact]
    public void Each_shape_of_a_role_has_one_template_with_its_count()
    {
        var pieces = Templates.Of(BookQuilt.Of("sawtooth-star", 2, 2));
        // Four corner squares, eight star points, four geese, one center a block.
        Assert.Equal([4 * 1, 4 * 4, 4 * 4, 4 * 8], pieces.Select(p => p.Count).Order());
        Assert.All(pieces, p => Assert.True(Area(p.Cut) > Area(p.Sewn)));
    }

    /// <summary>A right triangle with unequal legs has a hand, one with equal legs none.</summary>
    [Theory]
    [InlineData(3, 3, false)]
    [InlineData(3, 4, true)]
    public void A_shape_that_differs_from_its_mirror_image_has_a_hand(double across, double up, bool hand)
    {
        ImmutableArray<Spot> one = [new(0, 0), new(across, 0), new(0, up)];
        ImmutableArray<Spot> mirror = [new(0, 0), new(0, up), new(-across, 0)];
        Assert.Equal(hand, ShapeHand.Of(one).HasHand);
        Assert.Equal(ShapeHand.Of(one).Mirrored, ShapeHand.Of(mirror).Shape);
        Assert.Equal(ShapeHand.Of(one), ShapeHand.Of([.. one.Select(p => new Spot(-p.Y + 7, p.X))]));
    }

    [Fact]
    public void Templates_name_their_mirror_images()
    {
        var pieces = Templates.Of(BookQuilt.Of("kaleidoscope", 1, 1));
        Assert.Contains(Templates.Of(BookQuilt.Of("sawtooth-star", 2, 2)), p => !p.HasHand);
        Assert.All(pieces.Where(p => p.Mirror is not null), p => Assert.Equal(p.Label, pieces.Single(other => other.Label == p.Mirror).Mirror));
    }

    /// <summary>A quarter circle of 3 in radius: chords lose less than a thousandth of its area.</summary>
    [Fact]
    public void Arcs_are_drawn_round()
    {
        var quilt = BookQuilt.Of("drunkards-path", 1, 1);
        var arcs = quilt.Blocks[0].Patches.Where(p => p.Arcs.Length > 0).ToArray();
        Assert.NotEmpty(arcs);
        var side = 12.0 * 12;
        Assert.Equal(side, Templates.Of(quilt).Sum(p => Area(p.Sewn) * p.Count), 6);
    }

    /// <summary>A log cabin goes onto a foundation in the order of its logs, and a flying goose begins with its body.</summary>
    [Theory]
    [InlineData("log-cabin")]
    [InlineData("pineapple")]
    [InlineData("square-in-a-square")]
    [InlineData("economy-patch")]
    public void Blocks_that_grow_outward_have_a_foundation_order(string block)
    {
        var shapes = BlockBook.Find(block)!.At(Length.Inches(12)).Patches.Select(p => new Polygon(p.Corners).CounterClockwise()).ToImmutableArray();
        var order = FoundationOrder.Of(shapes);
        Assert.NotNull(order);
        Assert.Equal(Enumerable.Range(0, shapes.Length), order.Value.Order());
        // Everything before a section lies on one side of a line along its edge.
        for (var i = 1; i < shapes.Length; i++)
        {
            var corners = shapes[order.Value[i]].Corners;
            Assert.Contains(
                Enumerable.Range(0, corners.Length).Select(c => new Line(corners[c], corners[(c + 1) % corners.Length])),
                line => order.Value.Take(i).All(before => shapes[before].Corners.All(p => line.SideOf(p) <= 0))
            );
        }
    }

    [Theory]
    [InlineData("four-patch")]
    [InlineData("nine-patch")]
    [InlineData("ohio-star")]
    public void Blocks_of_rows_have_none(string block) =>
        Assert.Null(FoundationOrder.Of([.. BlockBook.Find(block)!.At(Length.Inches(12)).Patches.Select(p => new Polygon(p.Corners).CounterClockwise())]));

    /// <summary>A patch with a corner that points inward is what no cut across makes.</summary>
    [Fact]
    public void Tumbling_blocks_on_a_frame_of_one_piece_a_side_are_refused()
    {
        // The book divides the frame where the drawing has its inward corners; here it is whole again.
        var quilt = BookQuilt.Of("tumbling-blocks", 1, 1);
        var patches = quilt.Blocks[0].Patches;
        Point[] Corners(int patch) => [.. patches[patch].Corners];
        var left = patches[3] with { Corners = [.. Corners(3)[..3], .. Corners(5)[1..]] };
        var right = patches[6] with { Corners = [.. Corners(6)[..2], .. Corners(8)[2..], Corners(8)[0], Corners(6)[3]] };
        quilt = quilt with { Blocks = [quilt.Blocks[0] with { Patches = [.. patches[..3], left, right] }] };
        Assert.DoesNotContain(QuiltRules.Check(quilt), f => f.Weight == Kitwright.Findings.Weight.Fault);
        var planned = Kitwright.Piecing.QuiltPlanner.Plan(quilt, null, [], Kitwright.Piecing.PlanOptions.Usual, Kitwright.Cutting.FirstFit.Plan);
        Assert.Null(planned.Value);
        Assert.Contains(planned.Findings, f => f.Rule is "piecing.set-in-seam" or "piecing.shape");
    }

    /// <summary>A curve longer than 4 in is pinned at its middle and quarters; what is pinned together is marked alike.</summary>
    [Theory]
    [InlineData("drunkards-path", 6, 3)]
    [InlineData("drunkards-path", 3, 1)]
    public void Both_patches_along_a_curve_have_the_same_marks(string id, int width, int marks)
    {
        var quilt = (NewQuilt.With(BlockBook.Find(id)!, LengthUnit.Inch) with { BlockWidth = Length.Inches(width) }).Make().Value!;
        var templates = Templates.Of(quilt);

        var shared = (
            from one in templates[0].Marks
            from other in templates[1].Marks
            where one.At.IsAt(other.At)
            select (one.Outward + other.Outward).Length
        ).ToArray();
        Assert.Equal(marks, shared.Length);
        Assert.All(shared, sum => Assert.Equal(0, sum, 9));
    }
}
