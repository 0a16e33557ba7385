namespace Kitwright.App.Tests.Commands;

/// <summary>A quilt from cloth that is there.</summary>
public sealed class StashCommandTest
{
    [Fact]
    public async Task Plenty_is_enough_and_scraps_may_be_mixed()
    {
        var cloth = Scratch.Written("scraps: 12 yd of 42\nmore: 6 yd of 42\n");
        var run = await Run.Of("stash", Run.Stars, "--cloth", cloth, "--budget", "while-you-type");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("This is enough.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_fabric_from_its_own_cloth_needs_as_many_cloths_as_fabrics()
    {
        var cloth = Scratch.Written("red: 12 yd of 42\nblue: 12 yd of 42\n");
        var run = await Run.Of("stash", Run.Stars, "--cloth", cloth, "--one-cloth-each", "--budget", "while-you-type", "--json");

        Assert.Equal(1, run.Exit);
        Assert.Contains("stash.no-cloth", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_list_with_columns_does_as_well()
    {
        var cloth = Scratch.Written("label,width,height,count\nfat quarter,22,18,3\n");
        var run = await Run.Of("stash", Run.Stars, "--cloth", cloth, "--budget", "while-you-type", "--json");

        Assert.Equal(1, run.Exit);
        Assert.Equal(3, run.Json.GetProperty("cut").GetProperty("sheets").GetInt32());
        Assert.True(run.Json.GetProperty("cut").GetProperty("shortIsProved").GetBoolean());
    }

    [Fact]
    public async Task What_is_not_there_answers_1_and_wrong_use_2()
    {
        Assert.Equal(1, (await Run.Of("stash", Run.Stars, "--cloth", "no-such-file.csv")).Exit);
        Assert.Equal(2, (await Run.Of("stash", Run.Stars)).Exit);
        Assert.Equal(2, (await Run.Of("stash", Run.Stars, "--cloth", "x", "--trim", "-1")).Exit);
    }
}
