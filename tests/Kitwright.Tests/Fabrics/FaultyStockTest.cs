using Kitwright.Stock;
using Xunit;

namespace Kitwright.Tests.Fabrics;

/// <summary>Every file of data/faulty/stock gives the rule beside the line that the table states.</summary>
public sealed class FaultyStockTest
{
    public static TheoryData<string, string, string> Table() => FaultyFiles.Table("stock");

    [Theory]
    [MemberData(nameof(Table))]
    public void Gives_the_stated_finding_and_no_shelf(string file, string rule, string place)
    {
        var read = StockCsv.Read(File.ReadAllBytes(Repository.PathOf("data", "faulty", "stock", file)));
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.Equal((rule, place), (finding.Rule, finding.Place));
    }

    [Fact]
    public void Table_lists_every_file() => FaultyFiles.AssertTableListsEveryFile("stock", "*.csv");
}
