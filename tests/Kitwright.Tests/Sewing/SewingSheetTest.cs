using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Pressing;
using Kitwright.Quilts;
using Kitwright.Sewing;
using Kitwright.Tests.Piecing;
using Kitwright.Tests.Pressing;
using Xunit;

namespace Kitwright.Tests.Sewing;

/// <summary>Seams of the demo quilt counted by hand.</summary>
public sealed class SewingSheetTest
{
    private static readonly QuiltPlan Plan = DemoPlanTest.Plan(null);
    private static readonly SewingSheet Sheet = SewingSheet.Of(Plan);

    /// <summary>A row of n parts is n − 1 seams (own arithmetic).</summary>
    [Fact]
    public void A_row_takes_one_seam_fewer_than_it_has_parts() =>
        Assert.All(
            Plan.Sewing.Recipes.Zip(Sheet.Steps).Where(pair => pair.First.Picture.Parts.Length > 1),
            pair => Assert.Equal(pair.First.Picture.Parts.Length - 1, pair.Second.SeamsEach)
        );

    /// <summary>
    /// The five by six sashed blocks are pieced as five long rows of six blocks and seven sashes, with six sash rows
    /// between and beside them: 12 seams each (own arithmetic).
    /// </summary>
    [Fact]
    public void The_center_of_the_sashed_stars_takes_the_seams_of_its_rows()
    {
        var rows = Sheet.Steps.Where(step => step is { SeamsEach: 12, Runs: > 1 }).ToArray();
        Assert.Equal(5 + 6, rows.Sum(step => step.Runs));
        Assert.Equal(132, rows.Sum(step => step.AllSeams));
    }

    [Fact]
    public void Every_step_draws_on_pieces_or_on_earlier_steps()
    {
        var known = Plan.Pieces.Select(piece => piece.Id).ToHashSet();
        foreach (var step in Sheet.Steps)
        {
            Assert.NotEmpty(step.Uses);
            Assert.All(step.Uses, use => Assert.Contains(use.Of, known));
            known.Add(step.Recipe);
        }
    }

    /// <summary>
    /// Four sides and four slants (own arithmetic): sides of two blocks of 12 in, slants of 3 √2 in. Every one is in the
    /// count, in the length that is sewn and among the seams that have an arrow.
    /// </summary>
    [Fact]
    public void A_mitered_border_is_eight_seams()
    {
        var quilt = BookQuilt.Of("four-patch", 2, 2) with { Borders = [new(Length.Inches(3), "frame", BorderStyle.Mitered, null, StripGrain.Lengthwise)] };
        var plan = BookQuilt.Plan(quilt)!;
        var recipe = Assert.Single(plan.Sewing.Recipes, r => r.Verbs.OfType<SewIn>().Any());
        var count = Assert.Single(SewingSheet.Of(plan).Steps, step => step.Recipe == recipe.Id);
        var trace = SeamTrace.Of(plan).Of(recipe.Id);

        Assert.Equal((8, 8), (count.SeamsEach, count.PressesEach));
        Assert.Equal(8, trace.SetIn.Length);
        Assert.Equal((4 * 24) + (4 * 3 * Math.Sqrt(2)), trace.SewnInches.Sum(), 6);
    }
}
