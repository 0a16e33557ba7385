using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Exchange;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Shop;
using Kitwright.Shop.Ledger;
using Kitwright.Stock;

namespace Kitwright.App.Planning;

/// <summary>A stock file on its way to the shelf: what stands in it, what is at fault, and what taking it over would do.</summary>
/// <param name="Id">Stands for this file in the ledger: taken over twice, it is booked once.</param>
/// <param name="Names">The file's own names of columns, where they are not the usual ones; an empty one leaves the column out.</param>
/// <param name="Head">Its header and first rows; null where it is no table.</param>
/// <param name="Shelf">What it states; null where a fault keeps it from being read.</param>
/// <param name="AtFault">The rows that findings are about, by line.</param>
/// <param name="Would">What taking it over would do; null where it cannot be taken over.</param>
public sealed record StockIntake(
    Guid Id,
    ImmutableDictionary<StockColumn, string> Names,
    TablePreview? Head,
    Shelf? Shelf,
    ImmutableArray<Finding> Findings,
    ImmutableSortedDictionary<int, TableRow> AtFault,
    StockImport? Would
)
{
    private const string Line = "line ";

    /// <summary>Reads a file; names remembered from an earlier one help where it has such columns.</summary>
    /// <param name="id">Made by the client.</param>
    public static async Task<StockIntake> Of(
        ShopStore store,
        Guid id,
        byte[] bytes,
        ImmutableDictionary<StockColumn, string> byHand,
        CancellationToken cancel
    )
    {
        var head = StockFile.Preview(bytes);
        var names = head.Value is { } found
            ? StockColumns.Fitting(found.Header, await store.Columns.Read(cancel)).SetItems(byHand)
            : byHand;
        var read = StockFile.Read(bytes, names);
        var shelf = read.Value is { } file ? LeftOut.Kept(file, await store.Stock.Shelf(cancel), Columns(head.Value!, names)) : null;
        var import = shelf is not null
            ? await store.Stock.Import(id, Environment.UserName, shelf, dryRun: true, cancel)
            : Checked<StockImport>.Failed();
        ImmutableArray<Finding> findings = [.. read.Findings, .. import.Findings];
        return new(id, names, head.Value, shelf, findings, RowsOf(bytes, findings), import.Value);
    }

    private static StockColumns Columns(TablePreview head, ImmutableDictionary<StockColumn, string> names) =>
        StockColumns.Match(new(1, head.Header), names).Value!;

    /// <summary>Takes the file over in one transaction, and remembers the names that were matched by hand.</summary>
    public async Task<Checked<StockImport>> TakeOver(ShopStore store, CancellationToken cancel)
    {
        var import = await store.Stock.Import(Id, Environment.UserName, Shelf!, dryRun: false, cancel);
        if (import.Value is not null)
        {
            var remembered = await store.Columns.Remember(Names.Where(n => n.Value.Length > 0 && StockColumns.Named(n.Value) != n.Key).ToDictionary(), cancel);
            return import with { Findings = [.. import.Findings, .. remembered.Findings] };
        }

        return import;
    }

    /// <summary>The line that a finding is about; null where it is about the file.</summary>
    public static int? LineOf(Finding finding) =>
        finding.Place.StartsWith(Line, StringComparison.Ordinal)
        && int.TryParse(finding.Place.AsSpan(Line.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var line)
            ? line
            : null;

    private static ImmutableSortedDictionary<int, TableRow> RowsOf(byte[] bytes, ImmutableArray<Finding> findings)
    {
        var lines = findings.Select(LineOf).OfType<int>().ToHashSet();
        return lines.Count == 0
            ? ImmutableSortedDictionary<int, TableRow>.Empty
            : StockFile.Lines(bytes, lines).ToImmutableSortedDictionary(row => row.Line, row => row);
    }
}
