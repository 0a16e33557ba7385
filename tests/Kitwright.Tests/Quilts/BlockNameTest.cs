using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Quilts;

public sealed class BlockNameTest
{
    [Theory]
    [InlineData("Barrister's block", "Barrister's")]
    [InlineData("Ohio star", "Ohio star")]
    [InlineData("Blockade", "Blockade")]
    [InlineData("block", "block")]
    public void No_sentence_says_block_twice(string name, string before) => Assert.Equal(before, BlockName.BeforeBlock(name));
}
