using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>
/// The shop's stock as separated text, one bolt a line: UTF-8, UTF-16 or Windows-1252; comma, semicolon or tab.
/// </summary>
/// <remarks>
/// Lengths are fractions or decimals with or without a unit (<c>12 3/8</c>, <c>12.375 yd</c>); bare widths are inches
/// and bare lengths yards. Never throws; bounded by <see cref="TableLimits"/>.
/// </remarks>
public static class StockCsv
{
    /// <summary>The shelf, or what keeps the file from being one, each beside its line.</summary>
    /// <param name="byHand">The file's own names of columns, where they are not the usual ones.</param>
    public static Checked<Shelf> Read(
        ReadOnlySpan<byte> bytes,
        ImmutableDictionary<StockColumn, string>? byHand = null
    ) => Read(bytes.ToArray(), byHand);

    /// <inheritdoc cref="Read(ReadOnlySpan{byte}, ImmutableDictionary{StockColumn, string}?)"/>
    public static Checked<Shelf> Read(Stream stream, ImmutableDictionary<StockColumn, string>? byHand = null) =>
        Read(TableText.Bounded(stream), byHand);

    /// <summary>The head of the file, for whoever matches its columns by hand.</summary>
    public static Checked<TablePreview> Preview(ReadOnlySpan<byte> bytes) =>
        With(bytes.ToArray(), (csv, _) => TablePreview.Of(csv));

    /// <summary>The rows that start on these lines, for whoever shows what is at fault; a bad file gives none.</summary>
    public static ImmutableArray<TableRow> Lines(ReadOnlySpan<byte> bytes, IReadOnlySet<int> lines) =>
        With(bytes.ToArray(), (csv, _) => Checked<TableLines>.Of(TableLines.Of(csv, lines))).Value?.Rows ?? [];

    private static Checked<Shelf> Read(byte[] bytes, ImmutableDictionary<StockColumn, string>? byHand) =>
        With(bytes, (csv, separator) => StockReader.Read(csv, byHand, commaIsPoint: separator != ','));

    private static Checked<T> With<T>(byte[] bytes, Func<CsvText, char, Checked<T>> read)
        where T : class
    {
        if (TableText.TooBig(bytes) is { } tooBig)
        {
            return Checked<T>.Failed(tooBig);
        }

        var separator = TableText.SeparatorOf(bytes);
        using var text = TableText.Open(bytes);
        return read(new(text, separator), separator);
    }
}
