using System.Collections.Immutable;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>The first rows of a table, and the columns that were recognized by their usual names.</summary>
/// <param name="Header">Names of the columns as the file has them.</param>
/// <param name="Rows">Rows below it.</param>
/// <param name="Matched">What was recognized: the header's name by what the column holds.</param>
/// <param name="Missing">Columns that a stock file must have and that were not recognized.</param>
public sealed record TablePreview(
    ImmutableArray<string> Header,
    ImmutableArray<TableRow> Rows,
    ImmutableSortedDictionary<StockColumn, string> Matched,
    ImmutableArray<StockColumn> Missing
)
{
    private const int RowsShown = 5;

    /// <summary>Reads no further than it shows.</summary>
    public static Checked<TablePreview> Of(ITable table)
    {
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        while (rows.Count <= RowsShown && table.TryNext(out var row))
        {
            if (!row.IsBlank)
            {
                rows.Add(row);
            }
        }

        if (rows.Count == 0)
        {
            return Checked<TablePreview>.Failed(table.Fault ?? Finding.Of("stock.empty", "file"));
        }

        var matched = StockColumns.Recognized(rows[0]);
        return Checked<TablePreview>.Of(
            new(
                rows[0].Cells,
                [.. rows.Skip(1)],
                matched,
                [.. StockColumns.Required.Where(column => !matched.ContainsKey(column))]
            )
        );
    }
}
