using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Shop.Rows;
using Kitwright.Stock;
using Microsoft.EntityFrameworkCore;

namespace Kitwright.Shop.Ledger;

/// <summary>What the shop's files call the columns of stock, where somebody matched them by hand.</summary>
public sealed class ColumnBook
{
    private readonly ShopStore store;

    internal ColumnBook(ShopStore store) => this.store = store;

    public async Task<ImmutableDictionary<StockColumn, string>> Read(CancellationToken cancel = default)
    {
        await using var context = store.NewContext();
        var rows = await context.ColumnNames.AsNoTracking().ToListAsync(cancel);
        return rows.ToImmutableDictionary(row => row.Column, row => row.Name);
    }

    /// <summary>Keeps these names; those of columns that are not among them stay as they were.</summary>
    public Task<Checked<IReadOnlyDictionary<StockColumn, string>>> Remember(IReadOnlyDictionary<StockColumn, string> names, CancellationToken cancel = default) =>
        store.TryWrite(
            async context =>
            {
                var held = await context.ColumnNames.ToDictionaryAsync(row => row.Column, cancel);
                foreach (var (column, name) in names)
                {
                    if (held.TryGetValue(column, out var row))
                    {
                        row.Name = name;
                    }
                    else
                    {
                        context.ColumnNames.Add(new() { Column = column, Name = name });
                    }
                }

                return Checked<IReadOnlyDictionary<StockColumn, string>>.Of(names);
            },
            cancel
        );
}
