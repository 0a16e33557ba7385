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
    public async Task Leftovers_serve_their_own_fabric_and_the_rest_is_to_be_bought()
    {
        var shelf = Scratch.Written("fabric,width,height,count\nOB-201,40,7 7/8,3\nno-such-fabric,40,90,9\n");
        var run = await Run.Of("stash", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--shelf", shelf, "--budget", "while-you-type", "--json");

        Assert.Equal((1, ""), (run.Exit, run.Error));
        var answer = run.Json.GetProperty("shelf");
        Assert.All(answer.GetProperty("used").EnumerateArray(), used => Assert.Equal("OB-201", used.GetProperty("fabric").GetString()));
        foreach (var buy in answer.GetProperty("buy").EnumerateArray())
        {
            var (pieces, there) = (buy.GetProperty("pieces").GetInt64(), buy.GetProperty("there").GetInt64());
            Assert.InRange(there, 0, buy.GetProperty("fabric").GetString() == "OB-201" ? pieces : 0);
            // Something is bought just where pieces are missing.
            Assert.Equal(there < pieces, buy.GetProperty("purchase").GetString() != "0");
        }

        Assert.Contains(answer.GetProperty("buy").EnumerateArray(), buy => buy.GetProperty("there").GetInt64() > 0);
        Assert.Contains("stash.no-colorway", (await Run.Of("stash", Run.Stars, "--shelf", shelf, "--budget", "while-you-type", "--json")).Output, StringComparison.Ordinal);
        Assert.Contains("yd to buy", (await Run.Of("stash", Run.Stars, "--stock", Run.Stock, "--colorway", "Harbor lights", "--shelf", shelf, "--budget", "while-you-type")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_there_answers_1_and_wrong_use_2()
    {
        Assert.Equal(1, (await Run.Of("stash", Run.Stars, "--cloth", "no-such-file.csv")).Exit);
        Assert.Equal(2, (await Run.Of("stash", Run.Stars)).Exit);
        Assert.Equal(2, (await Run.Of("stash", Run.Stars, "--cloth", "x", "--trim", "-1")).Exit);
    }
}
