using Kitwright.Blocks;
using Xunit;

namespace Kitwright.Tests.Blocks;

/// <summary>A block that is written reads back as the same drawing, whatever parameters it came from.</summary>
public sealed class BlockWriterTest
{
    [Theory]
    [MemberData(nameof(BlockBookTest.Files), MemberType = typeof(BlockBookTest))]
    public void What_is_written_reads_back_equal(string file)
    {
        var block = BlockFile.Read(Repository.Read("blocks", file)).Value!;
        var again = BlockFile.Read(BlockFile.Write(block));

        Assert.Empty(again.Findings);
        Assert.Equal(BlockFile.Write(block), BlockFile.Write(again.Value!));
        Assert.Equal(Likeness.KeyOf(block), Likeness.KeyOf(again.Value!));
        Assert.Equal((block.Id, block.Name, block.Family, block.Source, block.Grid), (again.Value!.Id, again.Value.Name, again.Value.Family, again.Value.Source, again.Value.Grid));
    }
}
