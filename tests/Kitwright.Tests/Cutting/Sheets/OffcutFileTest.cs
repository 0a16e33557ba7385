using System.Text;
using CsCheck;
using Kitwright.Cutting.Sheets;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Xunit;

namespace Kitwright.Tests.Cutting.Sheets;

public sealed class OffcutFileTest
{
    [Fact]
    public void What_is_written_is_read_back_the_same() =>
        Gen.Select(Gen.String[Gen.Char["ab,\";= -1\n"], 1, 8], Gen.Int[1, 20_000], Gen.Int[1, 20_000], Gen.Int[0, 90])
            .Array[0, 5]
            .Sample(cells =>
            {
                var pieces = cells
                    .Select(c => new Offcut(c.Item1.Trim().TrimStart('=', '-') is { Length: > 0 } name ? name : "x", Length.Ticks(c.Item2 * 127L), Length.Ticks(c.Item3 * 127L), c.Item4))
                    .ToArray();
                var read = OffcutFile.Read(Encoding.UTF8.GetBytes(OffcutFile.Write(pieces)));
                Assert.Empty(read.Findings);
                Assert.Equal(pieces.Select(p => p with { Fabric = p.Fabric.Trim() }), read.Value!.Pieces);
            });

    [Theory]
    [InlineData("fabric,width,height\nF,1,2\n", "cutlist.column-missing")]
    [InlineData("fabric,width,height,count\n,1,2,3\n", "leftovers.unknown-fabric")]
    [InlineData("fabric,width,height,count\nF,wide,2,3\n", "cutlist.measure")]
    [InlineData("fabric,width,height,count\nF,1,-2,3\n", "cutlist.not-above-zero")]
    [InlineData("fabric,width,height,count\nF,1,0,3\n", "cutlist.not-above-zero")]
    [InlineData("fabric,width,height,count\nF,1,2,1.5\n", "cutlist.count")]
    public void A_line_that_cannot_be_used_is_a_finding_and_nothing_is_taken(string text, string rule)
    {
        var read = OffcutFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Contains(read.Findings, f => f.Rule == rule);
        Assert.Null(read.Value);
    }
}
