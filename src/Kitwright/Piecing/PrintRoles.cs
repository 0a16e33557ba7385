using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>The roles that a colorway fills with a print that may not lie any way round.</summary>
public sealed record PrintRoles(ImmutableSortedDictionary<string, PrintDirection> Directions)
{
    public static PrintRoles None { get; } = new(ImmutableSortedDictionary<string, PrintDirection>.Empty);

    public static PrintRoles Of(Colorway? colorway, ImmutableArray<Fabric> shelf)
    {
        var directional = shelf.Where(fabric => fabric.Direction != PrintDirection.Any).ToDictionary(fabric => fabric.Number, fabric => fabric.Direction, StringComparer.OrdinalIgnoreCase);
        return colorway is null || directional.Count == 0
            ? None
            : new(
                colorway
                    .Fabrics.Where(pair => directional.ContainsKey(pair.Value))
                    .ToImmutableSortedDictionary(pair => pair.Key, pair => directional[pair.Value], StringComparer.Ordinal)
            );
    }

    public PrintDirection Of(string role) => Directions.GetValueOrDefault(role);

    /// <summary>Straight up and then turned by eighths, for a role that is directional; null for any other.</summary>
    internal PrintUp? Up(string role, int eighths) =>
        Of(role) switch
        {
            PrintDirection.OneWay => new PrintUp(0, TwoWay: false).Turned(eighths),
            PrintDirection.TwoWay => new PrintUp(0, TwoWay: true).Turned(eighths),
            _ => null,
        };
}
