using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Settings;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Borders pieced from units of the block book are planned, and come out when the checker cuts and sews them.</summary>
public sealed class UnitBorderPlansTest
{
    [Theory]
    [InlineData("half-square", 3, BorderStyle.CornerSquares, false)]
    [InlineData("half-square", 2, BorderStyle.Butted, true)]
    [InlineData("flying-goose", 2, BorderStyle.CornerSquares, true)]
    [InlineData("four-patch", 4, BorderStyle.Butted, false)]
    [InlineData("sawtooth-star", 4, BorderStyle.CornerSquares, false)]
    public void A_border_of_units_comes_out(string unit, int width, BorderStyle style, bool framed)
    {
        var quilt = Quilt(unit, Length.Inches(width), style, framed);
        var design = Layout.Of(quilt);
        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);

        Assert.Empty(planned.Findings);
        Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
        Assert.Contains(design.Placements, p => p.Id.Value.StartsWith("border/1/right/", StringComparison.Ordinal));
        // The border goes on as four runs, each a unit of its own, whatever lines up with what.
        var runs = planned.Value!.Sewing.Recipes.Where(r => r.Kind == "border-run").ToArray();
        Assert.NotEmpty(runs);
        Assert.Equal(4, runs.Sum(r => r.Copies));
        Assert.Equal(design.Patches.Any(p => p.Id.Value.Contains("/coping/", StringComparison.Ordinal)), planned.Value.Pieces.Any(p => p.Role == quilt.Borders[0].Role));
    }

    /// <summary>Two blocks in turn: mirrored from the middle, both ends of a run are the first of them.</summary>
    [Fact]
    public void Units_that_take_turns_come_out()
    {
        var quilt = BorderChanges.Alternating(Quilt("half-square", Length.Inches(2), BorderStyle.CornerSquares, false), 0, "hourglass")!;
        var top = Layout.Of(quilt).Placements.Where(p => p.Id.Value.StartsWith("border/1/top/", StringComparison.Ordinal)).Select(p => p.Block.StartsWith("hourglass", StringComparison.Ordinal)).ToArray();
        var planned = QuiltPlanner.Plan(quilt, null, [], PlanOptions.Usual, FirstFit.Plan);

        Assert.Equal(Enumerable.Range(0, top.Length).Select(i => int.IsOddInteger((2 * i) + 1 > top.Length ? top.Length - 1 - i : i)), top);
        Assert.Equal(quilt.Borders[0].Units, QuiltFile.Read(QuiltFile.Write(quilt)).Value!.Borders[0].Units);
        Assert.Empty(planned.Findings);
        Assert.Empty(PlanChecker.Check(planned.Value!).Findings);
    }

    private static Quilt Quilt(string unit, Length width, BorderStyle style, bool framed)
    {
        var quilt = DemoQuilts.Named("tidemark-nine-patch");
        var (block, roles) = BookUnits.Of(BlockBook.Find(unit)!, quilt);
        var pieced = new Border(width, quilt.Borders[0].Role, style, style == BorderStyle.CornerSquares ? roles[^1] : null, StripGrain.Crosswise)
        {
            Units = new(block.Id, 0, null, true, null, null, true),
        };
        return quilt with { Blocks = quilt.Blocks.Add(block), Borders = framed ? [pieced, quilt.Borders[0]] : [pieced] };
    }
}
