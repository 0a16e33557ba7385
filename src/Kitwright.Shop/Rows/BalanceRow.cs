namespace Kitwright.Shop.Rows;

/// <summary>
/// What is left on a bolt: the sum of its entries, kept beside them so that a page need not add them up. Changed only
/// together with an entry, in one transaction.
/// </summary>
public sealed class BalanceRow
{
    public required string Bolt { get; init; }
    public required long OnHandTicks { get; set; }

    /// <summary>How many entries it holds; guards it against two writers.</summary>
    public required int Entries { get; set; }
}
