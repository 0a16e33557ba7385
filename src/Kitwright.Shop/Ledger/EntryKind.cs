namespace Kitwright.Shop.Ledger;

/// <summary>Why the length of a bolt changes.</summary>
public enum EntryKind
{
    /// <summary>A bolt comes in.</summary>
    Received,

    /// <summary>A customer or a kit gives cloth back.</summary>
    Returned,

    /// <summary>There is more than the record says.</summary>
    Found,

    /// <summary>Squaring the end when the bolt is put on the table.</summary>
    Squared,

    /// <summary>A length for a kit.</summary>
    Cut,

    /// <summary>A length over the counter.</summary>
    Sold,

    /// <summary>Flawed, stained or torn cloth taken off.</summary>
    Damaged,

    /// <summary>There is less than the record says.</summary>
    Lost,

    /// <summary>Asked for only: the bolt was measured; booked as found or lost.</summary>
    Counted,
}

internal static class EntryKinds
{
    public static bool Brings(this EntryKind kind) => kind is EntryKind.Received or EntryKind.Returned or EntryKind.Found;
}
