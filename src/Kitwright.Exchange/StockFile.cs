using System.Collections.Immutable;
using Kitwright.Exchange.Workbooks;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Stock;

namespace Kitwright.Exchange;

/// <summary>A stock file of any kind that is read here, told apart by its first bytes and not by its name.</summary>
public static class StockFile
{
    /// <summary>A file of up to this many bytes need be handed over; a longer one is refused either way.</summary>
    public const int MostBytes = TableLimits.Bytes;

    /// <inheritdoc cref="StockCsv.Read(ReadOnlySpan{byte}, ImmutableDictionary{StockColumn, string}?)"/>
    public static Checked<Shelf> Read(byte[] bytes, ImmutableDictionary<StockColumn, string>? byHand = null) =>
        IsWorkbook(bytes) ? StockXlsx.Read(bytes, byHand) : StockCsv.Read(bytes, byHand);

    /// <summary>The head of the file, for whoever matches its columns by hand.</summary>
    public static Checked<TablePreview> Preview(byte[] bytes) =>
        IsWorkbook(bytes) ? StockXlsx.Preview(bytes) : StockCsv.Preview(bytes);

    /// <summary>The rows that start on these lines, for whoever shows what is at fault; a bad file gives none.</summary>
    public static ImmutableArray<TableRow> Lines(byte[] bytes, IReadOnlySet<int> lines) =>
        IsWorkbook(bytes) ? StockXlsx.Lines(bytes, lines) : StockCsv.Lines(bytes, lines);

    // A zip archive; or the older binary workbooks, which are then refused as no workbook rather than read as text.
    private static bool IsWorkbook(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith("PK"u8) || bytes.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0]);
}
