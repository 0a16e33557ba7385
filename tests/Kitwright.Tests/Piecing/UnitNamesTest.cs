using Kitwright.Tests.Pressing;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Units are called by where they go, as a quilter calls them.</summary>
public sealed class UnitNamesTest
{
    [Fact]
    public void The_units_of_the_demo_quilt_say_where_they_go()
    {
        var names = DemoPlanTest.Plan(null).Sewing.Recipes.Select(r => Catalog.English.Say(r.Name)).ToArray();

        Assert.DoesNotContain(names, name => name.Contains("unit of", StringComparison.Ordinal));
        Assert.Contains("center with the sides of border 1", names);
        Assert.Contains("center with border 1", names);
        Assert.Contains(names, name => name.EndsWith("of the Harbor star block", StringComparison.Ordinal));
    }

    /// <summary>Rounds of four logs, as published directions for log cabins count them ([APQ-LC], [RRQ], [LBQ]).</summary>
    [Theory]
    [InlineData("log-cabin", 1)]
    [InlineData("courthouse-steps", 2)]
    public void A_log_cabin_grows_round_by_round(string block, int atOnce)
    {
        var plan = BookQuilt.Plan(BookQuilt.Of(block, 1, 1))!;
        var names = plan.Sewing.Recipes.Select(r => Catalog.English.Say(r.Name)).ToArray();

        string[] logs = atOnce == 1 ? ["first log", "first two logs", "first three logs", "complete"] : ["first two logs", "complete"];
        var rounds = names.Where(name => name.StartsWith("round ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(rounds);
        Assert.Equal(
            rounds.Select((_, i) => $"round {(i / logs.Length) + 1} of the {names.First(n => n.EndsWith(" block", StringComparison.Ordinal) && !n.StartsWith("round", StringComparison.Ordinal))}, {logs[i % logs.Length]}"),
            rounds
        );
    }

    /// <summary>A nine-patch is rows, and a framed square is no log cabin.</summary>
    [Theory]
    [InlineData("nine-patch")]
    [InlineData("churn-dash")]
    [InlineData("bars")]
    public void What_is_no_log_cabin_has_no_rounds(string block) =>
        Assert.DoesNotContain(BookQuilt.Plan(BookQuilt.Of(block, 1, 1))!.Sewing.Recipes, r => r.Name.Key == "unit.round");
}
