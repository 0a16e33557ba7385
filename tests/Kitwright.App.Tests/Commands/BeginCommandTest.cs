using Kitwright.Quilts;

namespace Kitwright.App.Tests.Commands;

public sealed class BeginCommandTest
{
    [Fact]
    public async Task A_quilt_is_begun_from_the_book_and_planned_from_its_file()
    {
        var file = Scratch.File("quilt.json");

        var begun = await Run.Of("begin", "ohio-star", "--name", "Beacon", "--size", "9", "--set", "4x5", "--sashing", "1 1/2", "--border", "5", "--stock", Run.Stock, "--out", file);

        Assert.Equal((0, ""), (begun.Exit, begun.Error));
        var quilt = QuiltFile.Read(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).Value!;
        Assert.Equal(("Beacon", 4, 5, 1), (quilt.Name, quilt.Setting.Columns, quilt.Setting.Rows, quilt.Colorways.Length));
        // 4 blocks of 9, 5 sashes of 1 1/2, two borders of 5.
        Assert.Equal(Kitwright.Measure.Length.Inches(53, 1, 2), Layout.Of(quilt).Width);
        Assert.Equal(0, (await Run.Of("plan", file, "--stock", Run.Stock, "--colorway", "First pull")).Exit);
    }

    [Theory]
    [InlineData("The book has no block “no-such-block”", "no-such-block")]
    [InlineData("\u201c4x\u201d is not a measure", "ohio-star", "--set", "4")]
    [InlineData("\u201cNaN\u201d is not a measure", "ohio-star", "--size", "NaN")]
    [InlineData("1,000,000 blocks in a row or column cannot be laid", "ohio-star", "--set", "1000000x1000000")]
    [InlineData("-3 in is too small or too large here", "ohio-star", "--size", "-3")]
    public async Task What_cannot_be_begun_is_a_finding(string said, params string[] args)
    {
        var run = await Run.Of(["begin", .. args]);

        Assert.Equal(1, run.Exit);
        Assert.Contains(said, run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("kitwright-quilt", run.Output, StringComparison.Ordinal);
    }
}
