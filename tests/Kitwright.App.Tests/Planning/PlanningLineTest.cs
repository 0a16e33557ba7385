using Kitwright.App.Planning;
using Kitwright.App.Tests.Commands;
using Kitwright.Cutting;
using Kitwright.Findings;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.App.Tests.Planning;

/// <summary>What is said where no plan can be shown.</summary>
public sealed class PlanningLineTest
{
    private static Quilt Stars => QuiltFile.Read(File.ReadAllText(Run.Stars)).Value!;

    /// <summary>The planner has said what it could not do: nobody is asked to report a fault of ours.</summary>
    [Fact]
    public void What_the_planner_could_not_do_is_said_once_and_by_itself()
    {
        var wide = Finding.Of("cutting.count", "piece/A1", ("label", "A1"), ("count", -1), ("most", 1));

        var planned = PlanningLine.Plan(Stars, null, [], PlanOptions.Usual, problem => new(FirstFit.Plan(problem).Value, [wide]));

        Assert.Null(planned.Plan);
        Assert.All(planned.Findings, finding => Assert.Equal("cutting.count", finding.Rule));
    }

    [Fact]
    public void A_plan_that_its_check_refuses_gives_way_to_a_simple_one()
    {
        var planned = PlanningLine.Plan(Stars, null, [], PlanOptions.Usual, problem => new(FirstFit.Plan(problem).Value! with { Strips = [] }, []));

        Assert.NotNull(planned.Plan);
        Assert.Contains("plan.fallback", planned.Findings.Select(f => f.Rule));
    }
}
