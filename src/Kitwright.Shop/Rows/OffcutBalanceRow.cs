namespace Kitwright.Shop.Rows;

/// <summary>
/// How many leftovers of one fabric and size there are: the sum of their entries. Changed only together with an entry, in
/// one transaction.
/// </summary>
public sealed class OffcutBalanceRow
{
    public required string Fabric { get; init; }
    public required long WidthTicks { get; init; }
    public required long HeightTicks { get; init; }
    public required int OnHand { get; set; }

    /// <summary>How many entries it holds; guards it against two writers.</summary>
    public required int Entries { get; set; }
}
