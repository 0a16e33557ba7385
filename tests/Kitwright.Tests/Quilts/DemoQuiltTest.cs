using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Quilts;

/// <summary>The demo quilts read without a fault, and come out in the size their sentence states.</summary>
public sealed class DemoQuiltTest
{
    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Repository.PathOf("examples", "quilts"), "*.json").Select(p => Path.GetFileName(p)!).Order()];

    [Theory]
    [MemberData(nameof(Files))]
    public void Reads_without_a_finding(string file)
    {
        var read = QuiltFile.Read(Repository.Read("examples", "quilts", file));
        Assert.True(read.Good, string.Join('\n', read.Findings.Select(f => $"{f.Place}: {Catalog.English.Say(f.Reason)}")));
        Assert.Empty(read.Findings);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Is_stored_as_it_is_written(string file)
    {
        var text = Repository.Read("examples", "quilts", file);
        var written = QuiltFile.Write(QuiltFile.Read(text).Value!);
        if (Environment.GetEnvironmentVariable("KITWRIGHT_GOLDEN") == "write")
        {
            File.WriteAllText(Repository.PathOf("examples", "quilts", file), written);
        }

        Assert.Equal(text, written);
    }

    // The sentence of the sashed stars: thirty 12 in blocks, 5 by 6, sashed 1 1/2 in all round, borders 2 and 5 in.
    [Fact]
    public void Sashed_stars_finish_83_by_96_and_a_half()
    {
        var design = Layout.Of(QuiltFile.Read(Repository.Read("examples", "quilts", "ostrel-bay-stars.json")).Value!);
        Assert.Equal(Length.Inches(83), design.Width);
        Assert.Equal(Length.Inches(96, 1, 2), design.Height);
        Assert.Equal(30, design.Placements.Length);
    }
}
