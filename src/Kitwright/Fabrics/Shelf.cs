using System.Collections.Immutable;

namespace Kitwright.Fabrics;

/// <summary>What the shop has: its fabrics, each once, and the bolts there are of them.</summary>
/// <remarks>Every bolt's fabric is among the fabrics; numbers and bolt ids are unique (ordinal).</remarks>
public sealed record Shelf(ImmutableArray<Fabric> Fabrics, ImmutableArray<Bolt> Bolts)
{
    public static Shelf Empty { get; } = new([], []);

    public Fabric? Fabric(string number) =>
        Fabrics.FirstOrDefault(f => string.Equals(f.Number, number, StringComparison.Ordinal));
}
