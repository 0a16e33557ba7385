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

    private static Checked<Shelf> Read(byte[] bytes, ImmutableDictionary<StockColumn, string>? byHand)
    {
        if (TableText.TooBig(bytes) is { } tooBig)
        {
            return Checked<Shelf>.Failed(tooBig);
        }

        var separator = TableText.SeparatorOf(bytes);
        using var text = TableText.Open(bytes);
        var csv = new CsvText(text, separator);
        var reader = new StockReader(byHand, commaIsPoint: separator != ',');
        while (!reader.Full && csv.TryNext(out var row))
        {
            reader.Add(row);
        }

        return reader.Finish(csv.Fault);
    }
}
