namespace Kitwright.App.Tests.Commands;

/// <summary>A stock file that tells how fabrics are printed, and what the plan makes of it.</summary>
public sealed class PrintsCommandTest
{
    private const string Header = "fabric,lot,bolt,width,yards,price,color,direction,repeat-along,repeat-across,panel\n";

    private static async Task<Run> Plan(string line, params string[] options) =>
        await Run.Of(["plan", Run.Stars, "--colorway", "Harbor lights", "--stock", Scratch.Written(Header + line), .. options]);

    [Fact]
    public async Task A_one_way_print_is_not_turned_and_the_plan_says_so()
    {
        var run = await Plan("OB-205,L1,B1,44,9,11.80,#f6f0e4,one-way,,,\n");

        Assert.Equal(0, run.Exit);
        Assert.Contains("The print runs along the cloth and has an up: no piece is turned.", run.Output, StringComparison.Ordinal);
        // Sashes that stand and sashes that lie are a class each.
        Assert.Contains("of 2 × 12 1/2 in  rectangle", run.Output, StringComparison.Ordinal);
        Assert.Contains("of 12 1/2 × 2 in  rectangle", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pieces_are_matched_where_a_role_is_named()
    {
        var run = await Plan("OB-101,L1,B1,44,19,11.80,#f6f0e4,,6,8,\n", "--match", "background");

        Assert.Contains("Each piece shows the same part of the print, which repeats every 6 in along the cloth and 8 in across it.", run.Output, StringComparison.Ordinal);
        Assert.Contains("sub-cut into 60 of 12 × 8 (A3)", run.Output, StringComparison.Ordinal);
        var unknown = await Plan("OB-101,L1,B1,44,19,11.80,#f6f0e4,,6,8,\n", "--match", "geese");
        Assert.NotEqual(0, unknown.Exit);
        Assert.Contains("The quilt has no role “geese”.", unknown.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Panels_are_bought_whole()
    {
        var run = await Plan("OB-101,L1,B1,44,19,11.80,#f6f0e4,,,,44\n");

        Assert.Contains("The cloth is printed in panels of 44 in and sold by the panel: 3 panels.", run.Output, StringComparison.Ordinal);
        // Three panels of 44 in are 132 in.
        Assert.Contains("Fabric A, OB-101: 3 2/3 yd", run.Output, StringComparison.Ordinal);
    }
}
