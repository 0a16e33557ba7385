using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Stock;

namespace Kitwright.Exchange.Workbooks;

/// <summary>The shop's stock as the first sheet of an XLSX workbook, one bolt a row. Never throws; bounded.</summary>
public static class StockXlsx
{
    /// <summary>The shelf, or what keeps the file from being one, each beside its row ("line 12" is row 12).</summary>
    /// <param name="byHand">The file's own names of columns, where they are not the usual ones.</param>
    public static Checked<Shelf> Read(byte[] bytes, ImmutableDictionary<StockColumn, string>? byHand = null) =>
        Workbook.With(bytes, sheet => StockReader.Read(sheet, byHand, commaIsPoint: false));

    /// <summary>The rows of these numbers as they stand in the sheet; a bad file gives none.</summary>
    public static ImmutableArray<TableRow> Lines(byte[] bytes, IReadOnlySet<int> lines) =>
        Workbook.With(bytes, sheet => Checked<TableLines>.Of(TableLines.Of(sheet, lines))).Value?.Rows ?? [];

    /// <summary>The head of the sheet, for whoever matches its columns by hand.</summary>
    public static Checked<TablePreview> Preview(byte[] bytes) => Workbook.With(bytes, TablePreview.Of);
}
