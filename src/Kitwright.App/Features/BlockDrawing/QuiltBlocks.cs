using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.App.Features.BlockDrawing;

/// <summary>Blocks between a quilt, where they have a size, and a drawing, where they have a grid.</summary>
public static class QuiltBlocks
{
    /// <summary>The block in units of its grid, with all roles of the quilt to choose from.</summary>
    public static BookBlock ToDraw(Quilt quilt, Block block)
    {
        // A block that is drawn on no grid gets one of inches; one whose cells are no squares keeps its columns.
        var unit = block.Width / block.Grid.Columns;
        var isSquare = (block.Height / unit).IsInteger;
        var columns = isSquare ? block.Grid.Columns : 1;
        unit = block.Width / columns;
        return new BookBlock(
            block.Id,
            block.Name,
            BlockFamily.Picture,
            null,
            new(columns, (int)(block.Height / unit).Floor()),
            quilt.Roles,
            [.. block.Patches.Select(p => Scaled(p, Rational.One / unit.InInches))]
        );
    }

    /// <summary>The quilt with a drawing in the place of one of its blocks, in that block's size.</summary>
    public static Quilt Put(Quilt quilt, string id, BookBlock drawn)
    {
        var old = quilt.Block(id);
        var sized = drawn.At(old.Width) with { Id = id, Name = drawn.Name };
        var missing = drawn.Roles.Where(role => drawn.Patches.Any(p => p.Role == role.Id) && quilt.Roles.All(r => r.Id != role.Id));
        return quilt with
        {
            Roles = [.. quilt.Roles, .. missing],
            Blocks = [.. quilt.Blocks.Select(block => block.Id == id ? sized : block)],
        };
    }

    /// <summary>
    /// A block of the book in a quilt's roles: each role of the block becomes the first of the quilt's that is as light
    /// or dark and not yet taken, or else any that is not yet taken. Roles beyond the quilt's stay the block's own.
    /// </summary>
    public static BookBlock InRolesOf(Quilt quilt, BookBlock block)
    {
        var open = quilt.Roles.ToList();
        var roles = new Dictionary<string, Role>(StringComparer.Ordinal);
        foreach (var role in block.Roles.Where(role => block.Patches.Any(p => p.Role == role.Id)))
        {
            var found = open.Find(r => r.Value == role.Value) ?? open.FirstOrDefault();
            if (found is not null)
            {
                open.Remove(found);
            }

            roles[role.Id] = found ?? role;
        }

        return block with
        {
            Roles = [.. quilt.Roles, .. roles.Values.Where(role => quilt.Roles.All(r => r.Id != role.Id))],
            Patches = [.. block.Patches.Select(p => p with { Role = roles[p.Role].Id })],
        };
    }

    private static BlockPatch Scaled(BlockPatch patch, Rational ratio) =>
        patch with
        {
            Corners = [.. patch.Corners.Select(c => c * ratio)],
            Arcs = [.. patch.Arcs.Select(a => a with { Center = a.Center * ratio })],
        };
}
