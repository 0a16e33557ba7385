using Kitwright.Checking.Tests.Samples;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Checking.Tests;

public sealed class SamplerTest
{
    [Fact]
    public void A_right_plan_has_no_findings() =>
        Assert.Equal([], PlanChecker.Check(Sampler.Plan).Findings.Select(f => $"{f.Rule} {f.Place} {Catalog.English.Say(f.Reason)}"));
}
