using CsCheck;
using Kitwright.Checking.Tests.Samples;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Turning or mirroring a whole plan changes nothing about what is right or wrong in it.</summary>
public sealed class SymmetryTest
{
    [Fact]
    public void A_right_plan_is_right_in_all_eight_ways()
    {
        for (var i = 0; i < 8; i++)
        {
            Assert.Equal([], PlanChecker.Check(Symmetry.Of(Sampler.Plan, i)).Findings.Select(f => $"{i}: {f.Rule} {f.Place}"));
        }
    }

    [Fact]
    public void A_wrong_plan_breaks_the_same_rules_in_all_eight_ways()
    {
        string[] names = [.. SewingMutantTest.Wrong.Select(row => row.Data)];
        Gen.Select(Gen.Int[0, names.Length - 1], Gen.Int[1, 7])
            .Sample(
                (which, index) =>
                {
                    var plan = SewingMutantTest.Wrong.Plan(names[which]);
                    return Rules(plan).SequenceEqual(Rules(Symmetry.Of(plan, index)));
                },
                iter: 150
            );
    }

    [Fact]
    public void The_trace_is_the_same_in_all_eight_ways()
    {
        var trace = PlanChecker.Check(Sampler.Plan).Trace.Links.ToHashSet();
        for (var i = 1; i < 8; i++)
        {
            Assert.Equal(trace, PlanChecker.Check(Symmetry.Of(Sampler.Plan, i)).Trace.Links.ToHashSet());
        }
    }

    private static IEnumerable<string> Rules(Plans.QuiltPlan plan) =>
        PlanChecker.Check(plan).Findings.Select(f => f.Rule).Order(StringComparer.Ordinal);
}
