using Kitwright.Shop.Ledger;

namespace Kitwright.Shop.Rows;

/// <summary>One line of the ledger of leftovers; added, never changed.</summary>
public sealed class OffcutEntryRow
{
    /// <summary>Order of booking; the clock is not relied on.</summary>
    public long Id { get; init; }

    public required Guid Booking { get; init; }
    public required string Fabric { get; init; }
    public required long WidthTicks { get; init; }
    public required long HeightTicks { get; init; }
    public required OffcutKind Kind { get; init; }

    /// <summary>Pieces; above zero where they come, below where they go.</summary>
    public required int Change { get; init; }

    /// <summary>What they were left of or used for, such as the path of a plan; null where nothing was said.</summary>
    public required string? For { get; init; }
}
