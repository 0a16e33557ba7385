namespace Kitwright.Shop.Rows;

/// <summary>A bolt; how much is on it follows from its entries.</summary>
public sealed class BoltRow
{
    public required string Id { get; init; }
    public required string Fabric { get; init; }
    public required string Lot { get; init; }
    public required bool Demo { get; init; }
}
