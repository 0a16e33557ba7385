namespace Kitwright.App.Tests.Commands;

/// <summary>The sew command for one person's hands, and with habits of pressing.</summary>
public sealed class SewCommandTest
{
    [Fact]
    public async Task Own_times_and_rest_tell_the_hours()
    {
        var run = await Run.Of("sew", Run.Stars, "--times", "Press 20 190; subcut 30 150", "--personal", "8", "--fatigue", "12.5");
        Assert.Equal(0, run.Exit);
        Assert.Contains("By your own times about", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--times", "Fly 3 4", "is no measured time")]
    [InlineData("--times", "Press 20", "is no measured time")]
    [InlineData("--times", "Press 0 190", "is no time")]
    [InlineData("--personal", "90", "is no allowance for rest")]
    [InlineData("--fatigue", "much", "is no allowance for rest")]
    public async Task What_is_no_time_is_a_finding(string option, string value, string words)
    {
        var run = await Run.Of("sew", Run.Stars, option, value);
        Assert.Equal(1, run.Exit);
        Assert.Contains(words, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_habit_of_pressing_changes_the_directions()
    {
        var usual = await Run.Of("sew", Run.Stars);
        foreach (var habit in (string[])["geese=goose", "sashing=blocks"])
        {
            var chosen = await Run.Of("sew", Run.Stars, "--press", habit);
            Assert.Equal(0, chosen.Exit);
            Assert.NotEqual(Directions(usual.Output), Directions(chosen.Output));
        }

        Assert.NotEqual(0, (await Run.Of("sew", Run.Stars, "--press", "geese=sideways")).Exit);
    }

    [Fact]
    public async Task Rounds_cut_generous_are_trimmed_in_the_steps()
    {
        var run = await Run.Of("sew", Run.Lantern, "--technique", "round=trimmed");
        Assert.Equal(0, run.Exit);
        Assert.Contains("Trim when it is pressed", run.Output, StringComparison.Ordinal);
    }

    // The first line has the plan's mark, which is another for every choice.
    private static string[] Directions(string output) => output.Split('\n')[1..];
}
