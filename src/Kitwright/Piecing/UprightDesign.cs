using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>
/// Which way directional prints must run in a design: upright in the quilt, of which a block that lies turned is a
/// variant of its own, or upright in each block as it is drawn. On point, blocks with their sashes and cornerstones stand
/// on their corner, and their prints with them; setting triangles and borders stand upright in the quilt.
/// </summary>
internal sealed class UprightDesign(Quilt quilt, Design design, PrintRoles prints)
{
    private readonly Dictionary<string, bool?> twoWay = [];

    public PrintRoles Prints => prints;

    /// <summary>The quarter turns for which a block is made: once as drawn, and for each that turns a print.</summary>
    public IEnumerable<int> TurnsOf(BlockDesign block) =>
        OnlyTwoWay(block) is null ? [0] : design.Placements.Where(p => p.Block == block.Id).Select(TurnOf).Append(0).Distinct().Order();

    /// <summary>By how many quarters a block lies turned, as far as its prints tell.</summary>
    public int TurnOf(Placement placement)
    {
        if (quilt.Prints == PrintSetting.WithTheBlock || OnlyTwoWay(design.Blocks.First(b => b.Id == placement.Block)) is not { } onlyTwoWay)
        {
            return 0;
        }

        var quarters = PrintUp.EighthsOf(placement.Motion) / 2;
        return onlyTwoWay ? quarters % 2 : quarters;
    }

    public Item InBlock(Patch patch, int turned) => Item.OfPatch(patch) with { Up = prints.Up(patch.Role, -2 * turned) };

    /// <remarks>A strip that lies would have its print lie too, were it cut along the selvage: it is cut across.</remarks>
    public Item InFrame(Patch patch)
    {
        var item = Item.OfFrame(patch, quilt.Borders) with { Up = prints.Up(patch.Role, FollowsBlocks(patch) ? 1 : 0) };
        return item with { Lengthwise = item.Lengthwise && !IsLaidAcross(item) };
    }

    /// <summary>What could not be done as it was asked for, and what never stands upright all round.</summary>
    public IEnumerable<Finding> Notes()
    {
        var laid =
            from patch in design.Patches
            let item = Item.OfFrame(patch, quilt.Borders) with { Up = prints.Up(patch.Role, 0) }
            where item.Lengthwise && IsLaidAcross(item)
            select item.Border;
        foreach (var border in laid.Distinct())
        {
            yield return Finding.NoteOf("piecing.print-border", $"/borders/{border - 1}/grain", ("border", border));
        }

        if (prints.Direction(quilt.Binding.Role) != PrintDirection.Any)
        {
            yield return Finding.NoteOf("piecing.print-binding", "/binding/role");
        }

        foreach (var role in quilt.Roles.Where(role => role.Matched && prints.Of(role.Id).Match is null))
        {
            yield return Finding.NoteOf("piecing.match-none", $"/roles/{quilt.Roles.IndexOf(role)}/matched", ("role", role.Name));
        }

        if (quilt.Backing.Seams == PanelSeams.Across && prints.Direction(quilt.Backing.Role) != PrintDirection.Any)
        {
            yield return Finding.NoteOf("piecing.print-backing", "/backing/seams");
        }
    }

    /// <summary>Along the selvage a border would be matched across, strip beside strip, which is not planned.</summary>
    public IEnumerable<Finding> Faults() =>
        from patch in design.Patches
        let print = prints.Of(patch.Role)
        where (print.Match is not null || print.Panel is not null) && InFrame(patch).Lengthwise
        group print by InFrame(patch).Border into same
        select Finding.Of(same.First().Match is null ? "piecing.panel-lengthwise" : "piecing.match-lengthwise", $"/borders/{same.Key - 1}/grain", ("border", same.Key));

    private static bool IsLaidAcross(Item item) => item.Up is not null && item.Shape.Bounds() is var (low, high) && high.X - low.X > high.Y - low.Y;

    private bool FollowsBlocks(Patch patch) => quilt.Setting.Kind == SettingKind.OnPoint && patch.Id.Value.Split('/') is [_, "sash" or "post", ..];

    /// <summary>Whether all directional prints of a block are two-way; null where it has none.</summary>
    private bool? OnlyTwoWay(BlockDesign block)
    {
        if (!twoWay.TryGetValue(block.Id, out var known))
        {
            PrintDirection[] directions = [.. block.Patches.Select(patch => prints.Direction(patch.Role)).Where(d => d != PrintDirection.Any)];
            twoWay[block.Id] = known = directions.Length == 0 ? null : directions.All(d => d == PrintDirection.TwoWay);
        }

        return known;
    }
}
