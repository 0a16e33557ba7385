using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Kitwright.Measure;

namespace Kitwright.Shop.Ledger;

/// <summary>One act to be booked: all of its lines or none.</summary>
/// <param name="Id">Made by the client; sent twice, it is booked once.</param>
/// <param name="By">Who did it.</param>
public sealed record Booking(Guid Id, string By, ImmutableArray<BookingLine> Lines)
{
    /// <summary>SHA-256, hexadecimal, of who did what: the same for the same act only.</summary>
    internal string Asked()
    {
        var text = new StringBuilder(By).Append('\n');
        foreach (var line in Lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"{line.Bolt}\t{line.Kind}\t{line.Length.InInches}\t{line.For}\n");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}

/// <summary>What happens to one bolt.</summary>
/// <param name="Length">Above zero, whichever way it goes; for a count, what was measured, from zero.</param>
/// <param name="For">What it was for, such as the path of a kit.</param>
public sealed record BookingLine(string Bolt, EntryKind Kind, Length Length, string? For = null);

/// <summary>One line of the ledger.</summary>
/// <param name="Change">Above zero where cloth comes, below where it goes.</param>
public sealed record StockEntry(
    long Id,
    Guid Booking,
    string Bolt,
    EntryKind Kind,
    Length Change,
    string? For,
    string By,
    DateTimeOffset At
);

/// <summary>A booking as it stands in the ledger.</summary>
/// <param name="Again">True where it stood there already and nothing was added.</param>
public sealed record Booked(Guid Id, bool Again, ImmutableArray<StockEntry> Entries);
