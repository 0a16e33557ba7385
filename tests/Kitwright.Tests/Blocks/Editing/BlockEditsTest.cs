using System.Collections.Immutable;
using CsCheck;
using Kitwright.Blocks;
using Kitwright.Blocks.Editing;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Xunit;

namespace Kitwright.Tests.Blocks.Editing;

/// <summary>Every edit keeps the block exactly filled, or refuses with a finding at its place.</summary>
public sealed class BlockEditsTest
{
    private static readonly ImmutableArray<Role> Roles = [new("light", "light", Value.Light), new("dark", "dark", Value.Dark)];

    private static BookBlock Empty(int divisions = 4) => BlockEdits.Empty(divisions, Roles);

    private static Point At(int x, int y) => new(x, y);

    private static readonly Gen<(int Kind, int A, int B, int C, int D)> AnyEdit = Gen.Select(
        Gen.Int[0, 6],
        Gen.Int[0, 4],
        Gen.Int[0, 4],
        Gen.Int[0, 4],
        Gen.Int[0, 4]
    );

    private static Checked<BookBlock> Apply(BookBlock block, (int Kind, int A, int B, int C, int D) edit)
    {
        var (kind, a, b, c, d) = edit;
        var count = block.Patches.Length;
        return kind switch
        {
            0 or 1 => BlockEdits.Seam(block, At(a, b), At(c, d)),
            2 => BlockEdits.MovePoint(block, At(a, b), At(c, d)),
            3 => BlockEdits.Recolor(block, ((a * 25) + (b * 5) + c) % count, d % 2 == 0 ? "light" : "dark"),
            4 => BlockEdits.Join(block, ((a * 5) + b) % count, ((c * 5) + d) % count),
            5 => BlockEdits.Turn(block, a, b % 2 == 0),
            _ => BlockEdits.Copy(block, At(0, 0), At(2, 2), At(a % 3, b % 3), c, d % 2 == 0),
        };
    }

    [Fact]
    public void Every_edit_keeps_the_exact_partition_or_is_refused() =>
        AnyEdit
            .Array[1, 14]
            .Sample(
                edits =>
                {
                    var block = Empty();
                    foreach (var edit in edits)
                    {
                        var edited = Apply(block, edit);
                        Assert.True(edited.Value is not null || edited.Findings.Any(f => f.Weight == Weight.Fault));
                        block = edited.Value ?? block;
                        Assert.Empty(Partition.Check(block.At(Length.Inches(block.Grid.Columns)), ""));
                    }
                },
                iter: 150
            );

    [Fact]
    public void A_seam_and_the_joining_of_its_two_sides_are_inverse()
    {
        var halved = BlockEdits.Seam(Empty(), At(0, 0), At(4, 4)).Value!;
        Assert.Equal(2, halved.Patches.Length);
        var whole = BlockEdits.Join(halved, 0, 1).Value!;
        Assert.Equal(Likeness.KeyOf(Empty()), Likeness.KeyOf(whole));
    }

    [Fact]
    public void Four_turns_and_two_mirrors_come_back()
    {
        var block = BlockEdits.Seam(Empty(), At(0, 1), At(4, 3)).Value!;
        var turned = Enumerable.Range(0, 4).Aggregate(block, (b, _) => BlockEdits.Turn(b, 1, false).Value!);
        var mirrored = Enumerable.Range(0, 2).Aggregate(block, (b, _) => BlockEdits.Turn(b, 0, true).Value!);
        Assert.Equal(Corners(block), Corners(turned));
        Assert.Equal(Corners(block), Corners(mirrored));
        Assert.Equal(Corners(block), Corners(BlockEdits.Regrid(BlockEdits.Regrid(block, 7).Value!, 4).Value!));
    }

    private static HashSet<Point> Corners(BookBlock block) => [.. block.Patches.SelectMany(p => p.Corners)];

    [Fact]
    public void A_quarter_copied_round_makes_a_pinwheel()
    {
        var block = BlockEdits.Seam(BlockEdits.Seam(BlockEdits.Seam(Empty(), At(2, 0), At(2, 4)).Value!, At(0, 2), At(4, 2)).Value!, At(0, 0), At(2, 2)).Value!;
        var lower = Enumerable.Range(0, block.Patches.Length).First(i => BlockEdits.Shape(block.Patches[i]).Where(new Point(1, new Rational(1, 2))) == Side.Inside);
        block = BlockEdits.Recolor(block, lower, "dark").Value!;
        block = BlockEdits.Copy(block, At(0, 0), At(2, 2), At(2, 0), 1, false).Value!;
        block = BlockEdits.Copy(block, At(0, 0), At(2, 2), At(2, 2), 2, false).Value!;
        block = BlockEdits.Copy(block, At(0, 0), At(2, 2), At(0, 2), 3, false).Value!;
        Assert.Equal(Likeness.KeyOf(BlockBook.Find("pinwheel")!), Likeness.KeyOf(block));
    }

    [Fact]
    public void What_cannot_be_is_refused_at_its_place()
    {
        Assert.Equal("drawing.seam.inside", Rule(BlockEdits.Seam(Empty(), At(0, 0), At(2, 2))));
        Assert.Equal("drawing.seam.point", Rule(BlockEdits.Seam(Empty(), At(1, 1), At(1, 1))));
        Assert.Equal("drawing.seam.nothing", Rule(BlockEdits.Seam(Empty(), At(0, 0), At(4, 0))));
        Assert.Equal("drawing.move.nothing", Rule(BlockEdits.MovePoint(Empty(), At(1, 1), At(2, 2))));
        Assert.Equal("drawing.grid", Rule(BlockEdits.Regrid(Empty(), 0)));
        // A corner of the block itself pulled in leaves a gap.
        Assert.Equal("quilt.gap", Rule(BlockEdits.MovePoint(Empty(), At(0, 0), At(1, 1))));
        Assert.Equal("(2, 2)", BlockEdits.Seam(Empty(), At(0, 0), At(2, 2)).Findings[0].Place);
    }

    private static string Rule(Checked<BookBlock> edited) => edited.Value is null ? edited.Findings[0].Rule : "none";

    [Fact]
    public void A_point_between_two_patches_is_moved_in_both()
    {
        var block = BlockEdits.Seam(BlockEdits.Seam(Empty(), At(0, 2), At(4, 2)).Value!, At(2, 0), At(2, 2)).Value!;
        // The corner in the middle lies on a side of the upper patch, which gains it.
        var moved = BlockEdits.MovePoint(block, At(2, 2), At(2, 3)).Value!;
        Assert.Contains(moved.Patches, p => p.Corners.Length == 5 && p.Corners.Contains(At(2, 3)));
        Assert.Empty(Partition.Check(moved.At(Length.Inches(4)), ""));
    }

    [Theory]
    [InlineData("nine-patch", true)]
    [InlineData("log-cabin", true)]
    [InlineData("eight-pointed-star", false)]
    [InlineData("bright-hopes", false)]
    public void Straight_seams_or_a_set_in_seam(string id, bool straight) =>
        Assert.Equal(straight, Sewability.Of(BlockBook.Find(id)!, Length.Inches(12), Length.Inches(0, 1, 4)).SetIn.IsEmpty);

    [Fact]
    public void A_patch_narrower_than_its_seam_allowances_is_told()
    {
        var block = BlockEdits.Seam(Empty(), At(1, 0), At(1, 4)).Value!;
        Assert.Empty(Sewability.Of(block, Length.Inches(4), Length.Inches(0, 1, 4)).Slender);
        Assert.Single(Sewability.Of(block, Length.Inches(1), Length.Inches(0, 1, 4)).Slender);
        Assert.True(Sewability.Of(BlockBook.Find("drunkards-path")!, Length.Inches(4), Length.Inches(0, 1, 4)).Curved);
    }
}
