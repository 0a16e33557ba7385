using Kitwright.Stock;

namespace Kitwright.Shop.Rows;

/// <summary>What the shop's own files call a column of stock.</summary>
public sealed class ColumnNameRow
{
    public required StockColumn Column { get; init; }
    public required string Name { get; set; }
}
