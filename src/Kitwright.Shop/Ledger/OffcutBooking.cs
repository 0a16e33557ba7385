using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Kitwright.Fabrics;
using Kitwright.Measure;

namespace Kitwright.Shop.Ledger;

/// <summary>One act with leftovers to be booked: all of its lines or none.</summary>
/// <param name="Id">Made by the client; sent twice, it is booked once.</param>
/// <param name="By">Who did it.</param>
public sealed record OffcutBooking(Guid Id, string By, ImmutableArray<OffcutLine> Lines)
{
    /// <summary>All of these pieces, for one reason.</summary>
    public static OffcutBooking Of(Guid id, string by, OffcutKind kind, IEnumerable<Offcut> pieces, string? what) =>
        new(id, by, [.. pieces.Select(p => new OffcutLine(p.Fabric, p.Width, p.Height, kind, p.Count, what))]);

    /// <summary>SHA-256, hexadecimal, of who did what: the same for the same act only.</summary>
    internal string Asked()
    {
        var text = new StringBuilder("leftovers\n").Append(By).Append('\n');
        foreach (var line in Lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"{line.Fabric}\t{line.Width.InInches}\t{line.Height.InInches}\t{line.Kind}\t{line.Count}\t{line.For}\n");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}

/// <summary>What happens to leftovers of one size.</summary>
/// <param name="Width">Across the fabric.</param>
/// <param name="Height">Along the fabric.</param>
/// <param name="Count">Above zero, whichever way they go; for a count, how many there are, from zero.</param>
/// <param name="For">What they were left of or used for, such as the path of a plan.</param>
public sealed record OffcutLine(string Fabric, Length Width, Length Height, OffcutKind Kind, int Count, string? For = null);

/// <summary>One line of the ledger of leftovers.</summary>
/// <param name="Change">Above zero where pieces come, below where they go.</param>
public sealed record OffcutEntry(
    long Id,
    Guid Booking,
    string Fabric,
    Length Width,
    Length Height,
    OffcutKind Kind,
    int Change,
    string? For,
    string By,
    DateTimeOffset At
);

/// <summary>A booking of leftovers as it stands in the ledger.</summary>
/// <param name="Again">True where it stood there already and nothing was added.</param>
public sealed record OffcutsBooked(Guid Id, bool Again, ImmutableArray<OffcutEntry> Entries);
