using System.IO.Compression;
using System.Text;

namespace Kitwright.Exchange.Tests.Workbooks;

/// <summary>Workbooks written part by part, for what no library writes.</summary>
internal static class HandmadeWorkbook
{
    public const string Header =
        "<row r=\"1\"><c t=\"inlineStr\"><is><t>fabric</t></is></c><c t=\"inlineStr\"><is><t>lot</t></is></c>"
        + "<c t=\"inlineStr\"><is><t>width</t></is></c><c t=\"inlineStr\"><is><t>yards</t></is></c>"
        + "<c t=\"inlineStr\"><is><t>price</t></is></c><c t=\"inlineStr\"><is><t>color</t></is></c></row>";

    /// <summary>Row 2 with the given cell under "yards".</summary>
    public static string Bolt(string yards) =>
        "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>0</v></c><c r=\"B2\" t=\"inlineStr\"><is><t>L1</t></is></c><c r=\"C2\"><v>44</v></c>"
        + yards
        + "<c r=\"E2\"><v>12.99</v></c><c r=\"F2\" t=\"inlineStr\"><is><t>#112233</t></is></c></row>";

    public static byte[] Of(string rows, string? sharedStrings = null, string? styles = null, Action<ZipArchive>? more = null)
    {
        var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(archive, "_rels/.rels", References(("r1", "officeDocument", "xl/workbook.xml")));
            Add(
                archive,
                "xl/workbook.xml",
                "<workbook xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>"
                    + "<sheet name=\"Hidden\" state=\"hidden\" r:id=\"h\"/><sheet name=\"Stock\" r:id=\"s\"/></sheets></workbook>"
            );
            Add(
                archive,
                "xl/_rels/workbook.xml.rels",
                References(("h", "worksheet", "worksheets/hidden.xml"), ("s", "worksheet", "/xl/worksheets/stock.xml"), ("t", "sharedStrings", "sharedStrings.xml"), ("y", "styles", "styles.xml"))
            );
            Add(archive, "xl/worksheets/hidden.xml", "<worksheet><sheetData/></worksheet>");
            Add(archive, "xl/worksheets/stock.xml", $"<worksheet><sheetData>{rows}</sheetData></worksheet>");
            Add(archive, "xl/sharedStrings.xml", sharedStrings ?? "<sst><si><r><t>F</t></r><r><t>1</t></r><rPh sb=\"0\" eb=\"1\"><t>not this</t></rPh></si></sst>");
            Add(archive, "xl/styles.xml", styles ?? "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"d\\-mmm\"/></numFmts><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/><xf numFmtId=\"12\"/></cellXfs></styleSheet>");
            more?.Invoke(archive);
        }

        return file.ToArray();
    }

    public static void Add(ZipArchive archive, string path, string text)
    {
        using var stream = archive.CreateEntry(path).Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private static string References(params (string Id, string Kind, string Target)[] references) =>
        "<Relationships>"
        + string.Concat(references.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/{r.Kind}\" Target=\"{r.Target}\"/>"))
        + "</Relationships>";
}
