using Kitwright.Shop.Ledger;

namespace Kitwright.Shop.Rows;

/// <summary>One line of the stock ledger; added, never changed.</summary>
public sealed class EntryRow
{
    /// <summary>Order of booking; the clock is not relied on.</summary>
    public long Id { get; init; }

    public required Guid Booking { get; init; }
    public required string Bolt { get; init; }
    public required EntryKind Kind { get; init; }

    /// <summary>Above zero where cloth comes, below where it goes; ticks.</summary>
    public required long Ticks { get; init; }

    /// <summary>What it was for, such as the path of a kit; null where nothing was said.</summary>
    public required string? For { get; init; }
}
