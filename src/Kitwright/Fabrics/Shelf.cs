using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Kitwright.Fabrics;

/// <summary>What the shop has: its fabrics, each once, and the bolts and leftovers there are of them.</summary>
/// <remarks>Every bolt's fabric is among the fabrics; numbers and bolt ids are unique (ordinal).</remarks>
public sealed record Shelf(ImmutableArray<Fabric> Fabrics, ImmutableArray<Bolt> Bolts)
{
    public static Shelf Empty { get; } = new([], []);

    /// <summary>Leftovers that were put on the shelf, by fabric, the largest first.</summary>
    [JsonPropertyName("leftovers")]
    public ImmutableArray<Offcut> Offcuts { get; init; } = [];

    public Fabric? Fabric(string number) =>
        Fabrics.FirstOrDefault(f => string.Equals(f.Number, number, StringComparison.Ordinal));

    /// <summary>The fabric's name; its number where the shelf does not know it.</summary>
    public string NameOf(string number) => Fabric(number)?.Name ?? number;

    /// <summary>
    /// The fabric's bolts, shortest first, then by lot and id: whatever is planned from them does not depend on the
    /// order in which they stand in a file.
    /// </summary>
    public ImmutableArray<Bolt> BoltsOf(string number) =>
        [
            .. Bolts.Where(b => string.Equals(b.Fabric, number, StringComparison.Ordinal))
                .OrderBy(b => b.OnHand)
                .ThenBy(b => b.Lot, StringComparer.Ordinal)
                .ThenBy(b => b.Id, StringComparer.Ordinal),
        ];
}
