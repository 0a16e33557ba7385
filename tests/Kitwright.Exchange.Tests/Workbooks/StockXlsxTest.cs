using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using CsCheck;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Exchange.Workbooks;
using Kitwright.Measure;
using Kitwright.Stock;
using Kitwright.Words;
using MiniExcelLibs;
using Xunit;

namespace Kitwright.Exchange.Tests.Workbooks;

public sealed class StockXlsxTest
{
    private static Finding OnlyFinding(byte[] file)
    {
        var read = StockFile.Read(file);
        Assert.Null(read.Value);
        var finding = Assert.Single(read.Findings);
        Assert.NotEmpty(Catalog.English.Say(finding.Reason) + Catalog.English.Say(finding.Remedy));
        return finding;
    }

    /// <summary>Written by another library, the workbook gives the shelf that the same table gives as CSV.</summary>
    [Fact]
    public void A_workbook_and_a_CSV_file_of_one_table_give_one_shelf()
    {
        string[] names = ["fabric", "name", "lot", "bolt", "width", "yards", "price", "color", "print", "second", "seed"];
        object?[][] table =
        [
            ["F-1", "Café & <tide>", "L7", "B1", 44, 12.375, 12.99, "#3a5f8c", "dots", "#ffffff", 7],
            ["F-1", null, "L8", "B2", null, "8 1/3", null, null, null, null, null],
            ["00123", "Numbers as text", "1", "B3", 43.5, 0.1 + 0.2, 9, "112233", "solid", null, null],
        ];
        var rows = table.Select(cells => names.Zip(cells).ToDictionary(c => c.First, c => c.Second));
        var file = new MemoryStream();
        file.SaveAs(rows);
        var csv = new StringBuilder(string.Join(',', names)).Append('\n');
        foreach (var cells in table)
        {
            csv.AppendJoin(',', cells.Select(c => c is double number ? ((decimal)number).ToString(null, System.Globalization.CultureInfo.InvariantCulture) : c)).Append('\n');
        }

        var read = StockFile.Read(file.ToArray());
        Assert.Empty(read.Findings);
        var expected = StockFile.Read(Encoding.UTF8.GetBytes(csv.ToString())).Value!;
        Assert.Equal(expected.Fabrics, read.Value!.Fabrics);
        Assert.Equal(expected.Bolts, read.Value.Bolts);
        // 0.1 + 0.2 yd, which a double does not hold exactly, is three tenths: 10 4/5 in, less a part of a tick.
        Assert.Equal(Length.Inches(10, 4, 5).RoundDownTo(Length.Ticks(1)), read.Value.Bolts[2].OnHand);
    }

    [Theory]
    [InlineData("<c r=\"D2\"><v>12.375</v></c>", "445 1/2")]
    [InlineData("<c r=\"D2\" s=\"2\"><v>12.375</v></c>", "445 1/2")]
    [InlineData("<c r=\"D2\" t=\"inlineStr\"><is><t>12 3/8</t></is></c>", "445 1/2")]
    [InlineData("<c r=\"D2\" t=\"str\"><v>1/2 yd</v></c>", "18")]
    [InlineData("<c r=\"D2\"><v>0.30000000000000004</v></c>", "10 4/5")]
    public void Numbers_and_fractions_are_read_as_they_are_shown(string cell, string inches)
    {
        var bolt = Assert.Single(StockFile.Read(HandmadeWorkbook.Of(HandmadeWorkbook.Header + HandmadeWorkbook.Bolt(cell))).Value!.Bolts);
        Assert.True(LengthText.TryParse(inches, out var length));
        Assert.InRange((length - bolt.OnHand).InInches.ToDouble(), 0, 1.0 / Length.TicksPerInch);
        Assert.Equal("F1", bolt.Fabric);
    }

    [Theory]
    [InlineData("<c r=\"D2\"><f>C2*2</f><v>88</v></c>", "stock.formula")]
    [InlineData("<c r=\"D2\"><f t=\"shared\" si=\"0\"/><v>88</v></c>", "stock.formula")]
    [InlineData("<c r=\"D2\" s=\"1\"><v>46089</v></c>", "stock.not-a-length")]
    [InlineData("<c r=\"D2\" t=\"e\"><v>#DIV/0!</v></c>", "stock.not-a-length")]
    [InlineData("<c r=\"D2\" t=\"b\"><v>1</v></c>", "stock.not-a-length")]
    [InlineData("<c r=\"D2\" t=\"s\"><v>99</v></c>", "stock.value-missing")]
    [InlineData("<c r=\"D2\"><v>NaN</v></c>", "stock.not-a-length")]
    [InlineData("<c r=\"D2\"><v>1E+300</v></c>", "stock.not-a-length")]
    [InlineData("", "stock.value-missing")]
    public void A_cell_at_fault_is_found_beside_its_row(string cell, string rule)
    {
        var finding = OnlyFinding(HandmadeWorkbook.Of(HandmadeWorkbook.Header + HandmadeWorkbook.Bolt(cell)));
        Assert.Equal((rule, "line 2"), (finding.Rule, finding.Place));
    }

    [Fact]
    public void What_a_spreadsheet_took_for_a_date_says_so_by_its_text() =>
        Assert.Contains(
            "2026-03-08",
            Catalog.English.Say(OnlyFinding(HandmadeWorkbook.Of(HandmadeWorkbook.Header + HandmadeWorkbook.Bolt("<c r=\"D2\" s=\"1\"><v>46089</v></c>"))).Reason)
        );

    [Fact]
    public void A_sheet_or_part_that_unpacks_to_too_much_is_refused_while_it_unpacks()
    {
        var zeros = new string(' ', 100_000_000);
        Assert.Equal("stock.unpacks-too-big", OnlyFinding(HandmadeWorkbook.Of(HandmadeWorkbook.Header + zeros)).Rule);
        Assert.Equal("stock.unpacks-too-big", OnlyFinding(HandmadeWorkbook.Of("", sharedStrings: $"<sst>{zeros}</sst>")).Rule);
    }

    [Fact]
    public void One_text_without_end_is_not_held()
    {
        var text = new string('x', 20_000_000);
        Assert.Equal("stock.cell-too-long", OnlyFinding(HandmadeWorkbook.Of($"<row><c t=\"str\"><v>{text}</v></c></row>")).Rule);
    }

    [Fact]
    public void Entities_that_grow_are_refused() =>
        Assert.Equal(
            "stock.not-a-workbook",
            OnlyFinding(HandmadeWorkbook.Of("", sharedStrings: "<!DOCTYPE x [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]><sst><si><t>&b;</t></si></sst>")).Rule
        );

    [Fact]
    public void A_million_rows_are_refused_and_the_findings_bounded()
    {
        var rows = new StringBuilder(HandmadeWorkbook.Header);
        for (var i = 0; i < 1_000_000; i++)
        {
            rows.Append("<row><c><v>1</v></c></row>");
        }

        var findings = StockFile.Read(HandmadeWorkbook.Of(rows.ToString())).Findings;
        Assert.Equal(("stock.too-many-lines", "stock.more-findings"), (findings[0].Rule, findings[^1].Rule));
        Assert.True(findings.Length < 110);
    }

    [Fact]
    public void A_cell_far_to_the_right_is_refused() =>
        Assert.Equal("stock.too-many-cells", OnlyFinding(HandmadeWorkbook.Of("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>")).Rule);

    public static TheoryData<string> NoWorkbooks => ["PK", "PK\u0003\u0004 and nothing more", "\u00D0\u00CF\u0011\u00E0 an old one", "\u0089PNG\r\n\u001A\n\0\0\0\rIHDR\0\0\u0001"];

    [Theory]
    [MemberData(nameof(NoWorkbooks))]
    public void What_is_no_workbook_is_refused(string text) =>
        Assert.Equal("stock.not-a-workbook", OnlyFinding(Encoding.Latin1.GetBytes(text)).Rule);

    [Fact]
    public void A_damaged_workbook_never_throws()
    {
        var whole = HandmadeWorkbook.Of(HandmadeWorkbook.Header + HandmadeWorkbook.Bolt("<c r=\"D2\"><v>12</v></c>"));
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[1, whole.Length]).Sample(
            (at, value, length) =>
            {
                byte[] damaged = [.. whole];
                damaged[at] = value;
                foreach (var file in new[] { damaged, damaged[..length] })
                {
                    var read = StockFile.Read(file);
                    Assert.True(read.Value is not null || !read.Findings.IsEmpty);
                }
            },
            iter: 2_000
        );
    }

    [Fact]
    public void A_damaged_part_never_throws()
    {
        var sheet = HandmadeWorkbook.Header + HandmadeWorkbook.Bolt("<c r=\"D2\"><v>12</v></c>");
        Gen.Select(Gen.Int[0, sheet.Length - 1], Gen.Char["<>&\"/=x0"]).Sample((at, character) =>
        {
            var read = StockFile.Read(HandmadeWorkbook.Of(sheet[..at] + character + sheet[(at + 1)..]));
            Assert.True(read.Value is not null || !read.Findings.IsEmpty);
        });
    }

    [Fact]
    public void Rows_at_fault_are_found_again_by_their_line()
    {
        var csv = "fabric,lot,width,yards,price,color\nF,L,44,\"two\nlines\",9,#112233\nG,L,44,5,9,red\n"u8.ToArray();
        Assert.Equal(["line 2", "line 4"], StockFile.Read(csv).Findings.Select(f => f.Place));
        Assert.Equal([(2, "F"), (4, "G")], StockFile.Lines(csv, new HashSet<int> { 2, 4 }).Select(row => (row.Line, row.Cells[0])));
        var workbook = HandmadeWorkbook.Of(HandmadeWorkbook.Header + HandmadeWorkbook.Bolt("<c r=\"D2\"><v>x</v></c>"));
        Assert.Equal("x", Assert.Single(StockFile.Lines(workbook, new HashSet<int> { 2 })).Cells[3]);
        Assert.Empty(StockFile.Lines("PK no workbook"u8.ToArray(), new HashSet<int> { 1 }));
    }

    [Fact]
    public void A_column_that_is_left_out_by_hand_is_not_read()
    {
        var csv = "fabric,lot,width,yards,price,color,seed\nF,L,44,5,9,#112233,a note of ours\n"u8.ToArray();
        Assert.Equal("stock.not-a-seed", OnlyFinding(csv).Rule);
        Assert.Single(StockFile.Read(csv, ImmutableDictionary<StockColumn, string>.Empty.Add(StockColumn.Seed, "")).Value!.Bolts);
        var read = StockFile.Read(csv, ImmutableDictionary<StockColumn, string>.Empty.Add(StockColumn.Yards, ""));
        Assert.Equal("stock.column-missing", Assert.Single(read.Findings).Rule);
    }

    [Fact]
    public void A_preview_shows_the_head_and_what_was_recognized()
    {
        var preview = StockFile.Preview("SKU,lot,Width,on hand,price,colour\nF,L,44,5,9,#112233\n"u8.ToArray()).Value!;
        Assert.Equal(["SKU", "lot", "Width", "on hand", "price", "colour"], preview.Header);
        Assert.Equal("5", Assert.Single(preview.Rows).Cells[3]);
        Assert.Equal("Width", preview.Matched[StockColumn.Width]);
        Assert.Equal("colour", preview.Matched[StockColumn.Color]);
        Assert.Equal([StockColumn.Fabric, StockColumn.Yards], preview.Missing);
        Assert.Equal(6, StockFile.Preview(HandmadeWorkbook.Of(HandmadeWorkbook.Header)).Value!.Header.Length);
    }
}
