namespace Kitwright.Shop.Rows;

/// <summary>One act of somebody in the shop, made of entries that stand or fall together.</summary>
public sealed class BookingRow
{
    /// <summary>Made by the client: an act that is sent twice is booked once.</summary>
    public required Guid Id { get; init; }

    /// <summary>SHA-256 of what was asked for, so that an id is never taken for another act.</summary>
    public required string Asked { get; init; }

    public required string By { get; init; }
    public required DateTimeOffset At { get; init; }
}
