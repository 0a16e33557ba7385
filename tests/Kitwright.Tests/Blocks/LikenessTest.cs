using System.Collections.Immutable;
using CsCheck;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Tests.Quilts;
using Xunit;

namespace Kitwright.Tests.Blocks;

public sealed class LikenessTest
{
    private static readonly Gen<BookBlock> AnyBlock = Gen.Int[0, BlockBook.All.Length - 1].Select(i => BlockBook.All[i]);

    private static BookBlock With(BookBlock block, ImmutableArray<BlockPatch> patches) => block with { Patches = patches };

    [Fact]
    public void Turning_mirroring_renaming_and_reordering_keep_the_key() =>
        Gen.Select(AnyBlock, Gen.Int[0, 7])
            .Sample(
                (block, position) =>
                {
                    var turned = CutBlocks.Positions(block.At(Length.Inches(block.Grid.Columns))).ElementAt(position);
                    var other = With(
                        block,
                        [.. turned.Patches.Reverse().Select(p => p with { Role = "x" + p.Role, Corners = Shifted(p.Corners), Arcs = Shifted(p.Arcs, p.Corners.Length) })]
                    );
                    Assert.Equal(Likeness.KeyOf(block), Likeness.KeyOf(other));
                },
                iter: 60
            );

    // The same loop told from its second corner on.
    private static ImmutableArray<Kitwright.Geometry.Point> Shifted(ImmutableArray<Kitwright.Geometry.Point> corners) =>
        [.. corners.Skip(1), corners[0]];

    private static ImmutableArray<Arc> Shifted(ImmutableArray<Arc> arcs, int corners) =>
        [.. arcs.Select(a => a with { Edge = (a.Edge + corners - 1) % corners })];

    [Fact]
    public void Another_color_of_one_patch_is_another_block() =>
        Gen.Select(AnyBlock, Gen.Int[0, 1000])
            .Sample(
                (block, at) =>
                {
                    var patch = at % block.Patches.Length;
                    var role = block.Patches[patch].Role;
                    if (block.Patches.Count(p => p.Role == role) > 1)
                    {
                        var other = With(block, block.Patches.SetItem(patch, block.Patches[patch] with { Role = "another" }));
                        Assert.NotEqual(Likeness.KeyOf(block), Likeness.KeyOf(other));
                    }
                },
                iter: 40
            );
}
