using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>The roles that a colorway fills with a print that may not lie any way round, is to be matched, or has two right sides.</summary>
public sealed record PrintRoles(ImmutableSortedDictionary<string, RolePrint> Prints)
{
    public static PrintRoles None { get; } = new(ImmutableSortedDictionary<string, RolePrint>.Empty);

    public static PrintRoles Of(Quilt quilt, Colorway? colorway, ImmutableArray<Fabric> shelf)
    {
        if (colorway is null)
        {
            return None;
        }

        var fabrics = shelf.DistinctBy(fabric => fabric.Number, StringComparer.OrdinalIgnoreCase).ToDictionary(fabric => fabric.Number, StringComparer.OrdinalIgnoreCase);
        var prints =
            from role in quilt.Roles
            where colorway.Fabrics.ContainsKey(role.Id)
            let fabric = fabrics.GetValueOrDefault(colorway.Fabrics[role.Id])
            where fabric is not null
            let print = Of(quilt, role, fabric)
            where print != RolePrint.Plain
            select KeyValuePair.Create(role.Id, print);
        return new(prints.ToImmutableSortedDictionary(StringComparer.Ordinal));
    }

    public RolePrint Of(string role) => Prints.GetValueOrDefault(role, RolePrint.Plain);

    public PrintDirection Direction(string role) => Of(role).Direction;

    /// <summary>Straight up and then turned by eighths, for a role that is directional; null for any other.</summary>
    internal PrintUp? Up(string role, int eighths) =>
        Direction(role) switch
        {
            PrintDirection.OneWay => new PrintUp(0, TwoWay: false).Turned(eighths),
            PrintDirection.TwoWay => new PrintUp(0, TwoWay: true).Turned(eighths),
            _ => null,
        };

    /// <remarks>
    /// Where each piece shows the same part of a print, it shows it the same way up; and a panel is a picture. Binding and
    /// backing of such cloth are cut from it as from any other.
    /// </remarks>
    private static RolePrint Of(Quilt quilt, Role role, Fabric fabric)
    {
        var panel = role.Id == quilt.Binding.Role || role.Id == quilt.Backing.Role ? null : fabric.PanelLength;
        var matched = role.Matched && panel is null && role.Id != quilt.Binding.Role && role.Id != quilt.Backing.Role && (fabric.RepeatAlong ?? fabric.RepeatAcross) is not null;
        return new(
            matched || panel is not null ? PrintDirection.OneWay : fabric.Direction,
            matched ? new() { Along = fabric.RepeatAlong, Across = fabric.RepeatAcross } : null,
            panel,
            fabric.TwoSided
        );
    }
}

/// <summary>What a role asks of its print.</summary>
/// <param name="Match">The repeats to which its pieces are matched; null where they show whatever comes.</param>
/// <param name="Panel">Length of a printed panel; null where the cloth is not printed in panels.</param>
/// <param name="TwoSided">Whether either side may be the right one.</param>
public sealed record RolePrint(PrintDirection Direction, PrintMatch? Match, Measure.Length? Panel, bool TwoSided)
{
    public static RolePrint Plain { get; } = new(PrintDirection.Any, null, null, false);
}
