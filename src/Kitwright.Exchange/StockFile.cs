using System.Buffers;
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

    // A zip archive; or the older binary workbooks, pictures and the like, which are then refused as no workbook rather
    // than read as text.
    private static bool IsWorkbook(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith("PK"u8) || bytes.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0]) || IsNoText(bytes[..Math.Min(bytes.Length, HeadBytes)]);

    /// <summary>
    /// Whether the head holds characters that no table has. Half a character of UTF-16 may look like one, so that a file
    /// that says it is UTF-16 is never taken for one.
    /// </summary>
    private static bool IsNoText(ReadOnlySpan<byte> head) =>
        !head.StartsWith<byte>([0xFF, 0xFE]) && !head.StartsWith<byte>([0xFE, 0xFF]) && head.ContainsAny(Controls);

    private const int HeadBytes = 512;

    // Without the zero of unmarked UTF-16, tab, line ends, form feed, and the mark that ends old files.
    private static readonly SearchValues<byte> Controls = SearchValues.Create([1, 2, 3, 4, 5, 6, 7, 8, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 27, 28, 29, 30, 31]);
}
