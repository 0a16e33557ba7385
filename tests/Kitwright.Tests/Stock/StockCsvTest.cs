using System.Collections.Immutable;
using System.Text;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Stock;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Stock;

public sealed class StockCsvTest
{
    private const string Header = "fabric,name,lot,bolt,width,yards,price,color,print,second,seed\n";

    private static Checked<Shelf> Read(string text) => StockCsv.Read(Encoding.UTF8.GetBytes(text));

    private static Finding OnlyFinding(string text)
    {
        var read = Read(text);
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.NotEmpty(Catalog.English.Say(finding.Reason));
        Assert.NotEmpty(Catalog.English.Say(finding.Remedy));
        return finding;
    }

    [Fact]
    public void A_line_is_a_bolt_and_its_fabric()
    {
        var shelf = Read(Header + "F-1,Low tide,L7,B-1,44,12 3/8,12.99,#3A5F8C,small floral,#ffffff,7\n").Value!;
        var fabric = Assert.Single(shelf.Fabrics);
        Assert.Equal(
            new("F-1", "Low tide", Length.Inches(44), 1299, "#3a5f8c", new(PrintKind.SmallFloral, "#ffffff", 7)),
            fabric
        );
        Assert.Equal(new("B-1", "F-1", "L7", Length.Inches(445, 1, 2)), Assert.Single(shelf.Bolts));
    }

    // Lengths by source [QRES]: 1/8 yd = 4 1/2 in … 7/8 yd = 31 1/2 in; 1 yd = 0.9144 m [WIKI-YD].
    [Theory]
    [InlineData("1/8", 9, 2)]
    [InlineData("3/8 yd", 27, 2)]
    [InlineData("0.625", 45, 2)]
    [InlineData("7⁄8", 63, 2)]
    [InlineData("12.375 yd", 891, 2)]
    [InlineData("0.9144 m", 36, 1)]
    [InlineData("18 in", 18, 1)]
    [InlineData("0", 0, 1)]
    public void Yards_are_fractions_decimals_or_carry_their_unit(string text, int numerator, int denominator)
    {
        var shelf = Read($"fabric,lot,width,yards,price,color\nF,L,44,{text},1,#000000\n").Value!;
        Assert.Equal(Length.Inches(new Rational(numerator, denominator)), Assert.Single(shelf.Bolts).OnHand);
    }

    [Fact]
    public void A_length_off_the_stored_grid_is_rounded_down()
    {
        var held = Assert.Single(Read("fabric,lot,width,yards,price,color\nF,L,44,12.3333,1,#000000\n").Value!.Bolts).OnHand;
        var stated = Length.Yards(new Rational(123333, 10000));
        Assert.True(held.TryTicks(out _));
        Assert.InRange((stated - held).InInches.ToDouble(), 0, 1.0 / Length.TicksPerInch);
    }

    [Fact]
    public void What_belongs_to_the_fabric_may_stand_on_its_first_line_only()
    {
        var shelf = Read(Header + "F,Tide,L,B1,44,5,9,#112233,dots,#445566,3\nF,,M,B2,,6,,,,,\n").Value!;
        Assert.Equal("Tide", Assert.Single(shelf.Fabrics).Name);
        Assert.Equal(["L", "M"], shelf.Bolts.Select(b => b.Lot));
    }

    [Fact]
    public void An_unmarked_lot_is_a_lot_of_its_own_and_bolts_get_ids()
    {
        var bolts = Read("fabric,lot,width,yards,price,color\nF,,44,5,9,#112233\nF,,44,5,,\n").Value!.Bolts;
        Assert.Equal(["F-1", "F-2"], bolts.Select(b => b.Id));
        Assert.NotEqual(bolts[0].Lot, bolts[1].Lot);
    }

    [Theory]
    [InlineData("F,L,44,-3,9,#112233", "stock.negative")]
    [InlineData("F,L,44,three,9,#112233", "stock.not-a-length")]
    [InlineData("F,L,44,1/0,9,#112233", "stock.not-a-length")]
    [InlineData("F,L,44,NaN,9,#112233", "stock.not-a-length")]
    [InlineData("F,L,44,1e9,9,#112233", "stock.not-a-length")]
    [InlineData("F,L,44,99999,9,#112233", "stock.too-long")]
    [InlineData("F,L,0,3,9,#112233", "stock.not-above-zero")]
    [InlineData("F,L,44,3,9.999,#112233", "stock.not-a-price")]
    [InlineData("F,L,44,3,-1,#112233", "stock.negative")]
    [InlineData("F,L,44,3,9,blue", "stock.not-a-color")]
    [InlineData("F,L,44,3,9,#12345", "stock.not-a-color")]
    [InlineData("F,L,44,,9,#112233", "stock.value-missing")]
    [InlineData("F,L,44,3,,#112233", "stock.value-missing")]
    [InlineData(",L,44,3,9,#112233", "stock.value-missing")]
    [InlineData("F,L,44,=1+2,9,#112233", "stock.formula")]
    [InlineData("F,\"L,44,3,9,#112233", "stock.unclosed-quote")]
    public void A_cell_at_fault_is_found_beside_its_line(string line, string rule)
    {
        var finding = OnlyFinding("fabric,lot,width,yards,price,color\nG,L,44,3,9,#112233\n" + line + "\n");
        Assert.Equal(rule, finding.Rule);
        Assert.Equal("line 3", finding.Place);
    }

    [Theory]
    [InlineData("one-way", PrintDirection.OneWay)]
    [InlineData("Two way", PrintDirection.TwoWay)]
    [InlineData("any", PrintDirection.Any)]
    [InlineData("", PrintDirection.Any)]
    public void A_fabric_says_how_it_is_printed(string direction, PrintDirection expected)
    {
        var text = Header.Replace("seed", "direction,repeat-along,repeat-across,panel,two-sided", StringComparison.Ordinal);
        var fabric = Assert.Single(Read(text + $"F,,L,B,44,5,9,#112233,,,{direction},12 3/8,10 cm,2/3 yd,yes\n").Value!.Fabrics);
        Assert.Equal(expected, fabric.Direction);
        Assert.Equal(Length.Inches(12, 3, 8), fabric.RepeatAlong);
        Assert.Equal(Length.Inches(new Rational(1000, 254)), fabric.RepeatAcross);
        Assert.Equal(Length.Inches(24), fabric.PanelLength);
        Assert.True(fabric.TwoSided);
    }

    [Fact]
    public void What_is_not_said_of_a_print_does_not_matter()
    {
        var fabric = Assert.Single(Read(Header + "F,,L,B1,44,5,9,#112233,,,\n").Value!.Fabrics);
        Assert.Empty(FabricWords.Facts(fabric));
        Assert.Equal((PrintDirection.Any, null, null, null, false), (fabric.Direction, fabric.RepeatAlong, fabric.RepeatAcross, fabric.PanelLength, fabric.TwoSided));
    }

    [Fact]
    public void A_file_without_the_columns_keeps_what_is_on_record()
    {
        var held = new Fabric("F", "Tide", Length.Inches(44), 900, "#112233", new(PrintKind.Solid, "#112233", 1))
        {
            Direction = PrintDirection.OneWay,
            RepeatAlong = Length.Inches(6),
            RepeatAcross = Length.Inches(4),
            PanelLength = Length.Inches(24),
            TwoSided = true,
        };
        var bytes = Encoding.UTF8.GetBytes(Header + "F,,L,B1,44,5,9,#112233,,,\n");
        var columns = StockColumns.Match(new(1, [.. Header.Trim().Split(',')])).Value!;
        var kept = Assert.Single(LeftOut.Kept(StockCsv.Read(bytes).Value!, new([held], []), columns).Fabrics);
        Assert.Equal(FabricWords.Facts(held), FabricWords.Facts(kept));
        Assert.Equal(4, FabricWords.Facts(kept).Length);
    }

    [Fact]
    public void A_bolt_that_stands_twice_names_its_first_line()
    {
        var finding = OnlyFinding(Header + "F,,L,B1,44,5,9,#112233,,,\nF,,L,B1,44,5,9,#112233,,,\n");
        Assert.Equal(("stock.bolt-twice", "line 3"), (finding.Rule, finding.Place));
        Assert.Equal(2, finding.Reason.Slots["first"]);
    }

    [Fact]
    public void Two_prices_of_one_fabric_are_a_finding()
    {
        var finding = OnlyFinding(Header + "F,,L,B1,44,5,9,#112233,,,\nF,,L,B2,44,5,9.50,#112233,,,\n");
        Assert.Equal("stock.two-values", finding.Rule);
        Assert.Contains("9.50", Catalog.English.Say(finding.Reason));
    }

    [Theory]
    [InlineData("fabric,lot,width,price,color\n", "stock.column-missing")]
    [InlineData("fabric,lot,width,yards,Yards,price,color\n", "stock.column-twice")]
    [InlineData("", "stock.empty")]
    [InlineData("\n\n", "stock.empty")]
    public void A_header_at_fault_is_found(string text, string rule) => Assert.Equal(rule, OnlyFinding(text).Rule);

    [Fact]
    public void Columns_may_be_matched_by_hand()
    {
        var byHand = ImmutableDictionary<StockColumn, string>.Empty
            .Add(StockColumn.Yards, "On hand")
            .Add(StockColumn.Fabric, "SKU");
        var bytes = Encoding.UTF8.GetBytes("SKU,lot,width,on hand,price,color\nF,L,44,5,9,#112233\n");
        Assert.Equal(Length.Yards(5), Assert.Single(StockCsv.Read(bytes, byHand).Value!.Bolts).OnHand);
    }

    [Fact]
    public void Findings_are_bounded_and_the_rest_counted()
    {
        var text = new StringBuilder("fabric,lot,width,yards,price,color\n");
        for (var i = 0; i < 1_000; i++)
        {
            text.Append("F,L,44,x,9,#112233\n");
        }

        var read = Read(text.ToString());
        Assert.Equal(101, read.Findings.Length);
        Assert.Equal(900, read.Findings[^1].Reason.Slots["count"]);
    }

    [Fact]
    public void A_million_lines_are_refused_with_one_finding()
    {
        var text = new StringBuilder("fabric,lot,width,yards,price,color\n");
        for (var i = 0; i < 1_000_000; i++)
        {
            text.Append("F,L,44,1,9,#112233\n");
        }

        Assert.Equal("stock.too-many-lines", OnlyFinding(text.ToString()).Rule);
    }

    [Fact]
    public void A_file_beyond_the_limit_is_refused_before_it_is_read()
    {
        using var endless = new EndlessStream();
        Assert.Equal("stock.too-big", Assert.Single(StockCsv.Read(endless).Findings).Rule);
        Assert.InRange(endless.Taken, TableLimits.Bytes, TableLimits.Bytes + 1_000_000);
    }

    private sealed class EndlessStream : Stream
    {
        public long Taken { get; private set; }
        public override bool CanRead => true;
        public override bool CanSeek => false;
        public override bool CanWrite => false;
        public override long Length => throw new NotSupportedException();
        public override long Position
        {
            get => Taken;
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)'a');
            Taken += count;
            return count;
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
