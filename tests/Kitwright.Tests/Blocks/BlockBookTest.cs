using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts.Partitions;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Blocks;

/// <summary>Every file of the block book is a block: read without a finding, filled exactly, and unlike all others.</summary>
public sealed class BlockBookTest
{
    public static TheoryData<string> Files => [.. Directory.GetFiles(Repository.PathOf("blocks"), "*.json").Select(p => Path.GetFileName(p)!).Order()];

    [Theory]
    [MemberData(nameof(Files))]
    public void Reads_without_a_finding_and_fills_its_square(string file)
    {
        var read = BlockFile.Read(Repository.Read("blocks", file));
        Assert.True(read.Findings.IsEmpty, string.Join('\n', read.Findings.Select(f => $"{f.Place}: {Catalog.English.Say(f.Reason)}")));
        Assert.Equal(file, read.Value!.Id + ".json");
    }

    [Fact]
    public void Holds_eighty_blocks_or_more_that_no_turn_or_renaming_makes_alike()
    {
        var alike = BlockBook.All.GroupBy(Likeness.KeyOf).Where(g => g.Count() > 1).Select(g => string.Join(" = ", g.Select(b => b.Id)));
        Assert.Empty(alike);
        // The log-cabin family is one drawing with parameters: it counts once.
        Assert.True(BlockBook.All.Count(b => b.Family != BlockFamily.LogCabin) + 1 >= 80);
    }

    [Fact]
    public void Every_family_has_blocks_and_a_name() =>
        Assert.All(
            Enum.GetValues<BlockFamily>(),
            family =>
            {
                Assert.Contains(BlockBook.All, b => b.Family == family);
                Assert.NotEmpty(Catalog.English.Say(BookBlock.ChapterOf(family)));
            }
        );
}
