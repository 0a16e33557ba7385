namespace Kitwright.Shop.Ledger;

/// <summary>Why the number of leftovers of one size changes.</summary>
public enum OffcutKind
{
    /// <summary>Left of something that was cut.</summary>
    Shelved,

    /// <summary>There are more than the record says.</summary>
    Found,

    /// <summary>Used or thrown away on record, and it was not so.</summary>
    PutBack,

    /// <summary>Cut for a quilt.</summary>
    Used,

    /// <summary>Sold, given or thrown away.</summary>
    ThrownAway,

    /// <summary>Shelved on record, and it was not so.</summary>
    TakenBack,

    /// <summary>There are fewer than the record says.</summary>
    Lost,

    /// <summary>Asked for only: they were counted; booked as found or lost.</summary>
    Counted,
}

internal static class OffcutKinds
{
    public static bool Brings(this OffcutKind kind) => kind is OffcutKind.Shelved or OffcutKind.Found or OffcutKind.PutBack;

    /// <summary>What takes an entry of this kind back.</summary>
    public static OffcutKind Reverse(this OffcutKind kind) => kind.Brings() ? OffcutKind.TakenBack : OffcutKind.PutBack;
}
