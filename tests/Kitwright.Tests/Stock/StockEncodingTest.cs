using System.Text;
using Kitwright.Measure;
using Kitwright.Stock;
using Xunit;

namespace Kitwright.Tests.Stock;

public sealed class StockEncodingTest
{
    private const string Comma = "fabric,name,lot,width,yards,price,color\nF,Café ½,L,44,\"1,5\",9,#112233\n";

    public static TheoryData<string, string> Cases()
    {
        var cases = new TheoryData<string, string>();
        foreach (var encoding in new[] { "utf-8", "utf-8-bom", "utf-16le", "utf-16le-bom", "utf-16be-bom", "windows-1252" })
        {
            cases.Add(encoding, ";");
            cases.Add(encoding, "\t");
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Encoding_and_separator_are_found(string encoding, string separator)
    {
        var lines = $"fabric,name,lot,width,yards,price,color\nF,Café ½,L,44,12@5,9@90,#112233\r\n";
        var shelf = StockCsv.Read(Bytes(lines.Replace(",", separator).Replace("@", ","), encoding)).Value!;
        Assert.Equal("Café ½", shelf.Fabrics[0].Name);
        Assert.Equal(990, shelf.Fabrics[0].PricePerYard);
        Assert.Equal(Length.Yards(new Rational(25, 2)), shelf.Bolts[0].OnHand);
    }

    [Fact]
    public void Where_commas_separate_a_decimal_comma_is_no_number() =>
        Assert.Equal("stock.not-a-length", Assert.Single(StockCsv.Read(Bytes(Comma, "utf-8")).Findings).Rule);

    private static byte[] Bytes(string text, string encoding) =>
        encoding switch
        {
            "utf-8" => Encoding.UTF8.GetBytes(text),
            "utf-8-bom" => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)],
            "utf-16le" => Encoding.Unicode.GetBytes(text),
            "utf-16le-bom" => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)],
            "utf-16be-bom" => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)],
            _ => CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetBytes(text),
        };
}
