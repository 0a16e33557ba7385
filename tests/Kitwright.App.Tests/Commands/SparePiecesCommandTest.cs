namespace Kitwright.App.Tests.Commands;

/// <summary>Spare pieces asked for in the command line.</summary>
public sealed class SparePiecesCommandTest
{
    [Fact]
    public async Task More_of_each_size_are_cut_where_a_role_is_named()
    {
        var (usual, spare) = (await Run.Of("plan", Run.Stars), await Run.Of("plan", Run.Stars, "--spare-pieces", "star=2"));

        Assert.Equal(0, spare.Exit);
        Assert.NotEqual(usual.Output, spare.Output);
        Assert.Contains("(2 to spare)", spare.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("geese=2")]
    [InlineData("star")]
    [InlineData("star=-1")]
    [InlineData("star=1000")]
    public async Task What_is_no_role_and_number_is_said(string text)
    {
        var run = await Run.Of("plan", Run.Stars, "--spare-pieces", text);

        Assert.NotEqual(0, run.Exit);
        Assert.Contains($"“{text}” names no role and number of spare pieces.", run.Output, StringComparison.Ordinal);
    }
}
