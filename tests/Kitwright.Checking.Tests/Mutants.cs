using Kitwright.Checking.Tests.Samples;
using Kitwright.Findings;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>Plans that are wrong in one place, by name, with the rule that must refuse each.</summary>
public sealed class Mutants : TheoryData<string>
{
    private readonly Dictionary<string, (string Rule, QuiltPlan Plan)> all = [];

    internal void Add(string name, string rule, Func<QuiltPlan, QuiltPlan> change)
    {
        all.Add(name, (rule, change(Sampler.Plan)));
        Add(name);
    }

    internal QuiltPlan Plan(string name) => all[name].Plan;

    /// <summary>The rule is among what the checker finds; and every finding can be said in words.</summary>
    internal void MustBeRefused(string name)
    {
        var (rule, plan) = all[name];
        var findings = PlanChecker.Check(plan).Findings;
        Assert.Contains(rule, findings.Select(f => f.Rule));
        Assert.All(findings, InWords);
    }

    internal static void InWords(Finding finding)
    {
        Assert.NotEqual("", finding.Place);
        foreach (var message in new[] { finding.Reason, finding.Remedy, finding.Measured, finding.Expected })
        {
            Assert.NotEqual("", message is null ? "none" : Catalog.English.Say(message));
        }
    }
}
