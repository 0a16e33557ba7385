using Kitwright.Checking.Tests.Samples;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Which cut pieces show in which patches, as a person would find by following the cloth.</summary>
public sealed class TraceTest
{
    private static readonly Trace Trace = PlanChecker.Check(Sampler.Plan).Trace;

    [Fact]
    public void Every_patch_comes_from_a_piece() =>
        Assert.Equal(
            Sampler
                .Plan.Design.Blocks.SelectMany(b => b.Patches)
                .Concat(Sampler.Plan.Design.Patches)
                .Select(p => p.Id)
                .ToHashSet(),
            Trace.Links.Select(l => l.Patch).ToHashSet()
        );

    [Fact]
    public void One_square_becomes_several_patches() =>
        Assert.Equal(
            ["block/triangles/patch/1", "block/triangles/patch/3", "block/triangles/patch/5", "block/triangles/patch/7"],
            Trace.Links.Where(l => l.Piece.Value == "piece/A3").Select(l => l.Patch.Value)
        );

    [Fact]
    public void A_joined_border_comes_from_both_its_strips() =>
        Assert.Equal(
            ["piece/C2 in unit/border", "piece/C3 in unit/border"],
            Trace.Links.Where(l => l.Patch.Value == "frame/border/1/patch/3").Select(l => $"{l.Piece} in {l.Recipe}").Order()
        );

    [Fact]
    public void The_recipe_is_the_one_that_first_takes_the_piece() =>
        Assert.Equal(["unit/goose"], Trace.Links.Where(l => l.Piece.Value == "piece/A2").Select(l => l.Recipe.Value).Distinct());
}
