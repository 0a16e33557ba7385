using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Stock;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>The demo quilt through the whole pure pipeline.</summary>
public sealed class DemoPlanTest
{
    private static string Examples { get; } = Repository.PathOf("examples");

    internal static QuiltPlan Plan(string? colorway, PlanOptions? options = null)
    {
        var quilt = QuiltFile.Read(File.ReadAllText(Path.Combine(Examples, "quilts", "ostrel-bay-stars.json"))).Value!;
        var shelf = StockCsv.Read(File.ReadAllBytes(Path.Combine(Examples, "stock.csv"))).Value!;
        var planned = QuiltPlanner.Plan(
            quilt,
            colorway is null ? null : quilt.Colorway(colorway),
            shelf.Fabrics,
            options ?? PlanOptions.Usual,
            FirstFit.Plan
        );
        Assert.Empty(planned.Findings);
        return planned.Value!;
    }

    [Fact]
    public void The_sashed_stars_are_as_large_as_their_sentence_says()
    {
        var plan = Plan(null);

        Assert.Equal((Length.Inches(83), Length.Inches(96, 1, 2)), (plan.Design.Width, plan.Design.Height));
        Assert.Equal(30, plan.Design.Placements.Length);
    }

    [Fact]
    public void The_same_input_gives_the_same_plan_and_mark()
    {
        Assert.Equal(PlanFile.Write(Plan(null)), PlanFile.Write(Plan(null)));
    }
}
