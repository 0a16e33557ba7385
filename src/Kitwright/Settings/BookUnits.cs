using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>Blocks of the book as units of a quilt's borders, in roles that the top has.</summary>
public static class BookUnits
{
    /// <summary>Units that borders have long been pieced from, by their ids in the book.</summary>
    public static readonly ImmutableArray<string> Usual = ["half-square", "flying-goose", "two-patch", "four-patch", "hourglass"];

    /// <summary>
    /// The block with each of its roles the first of the top's that is as light or dark and not yet taken, or else any
    /// not yet taken, or else the first; and those roles in the block's order.
    /// </summary>
    public static (Block Block, ImmutableArray<string> Roles) Of(BookBlock book, Quilt quilt)
    {
        var value = SettingChanges.ValueOf(quilt);
        var top = TopRoles(quilt);
        var open = top.ToList();
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var role in book.Roles)
        {
            var found = open.Find(r => value(r) == role.Value) ?? open.FirstOrDefault() ?? top[0];
            open.Remove(found);
            taken.Add(role.Id, found);
        }

        var block = book.At(Length.Inches(book.Grid.Columns));
        return (block with { Patches = [.. block.Patches.Select(p => p with { Role = taken[p.Role] })] }, [.. book.Roles.Select(role => taken[role.Id])]);
    }

    /// <summary>The roles of blocks and sashing, in the order of the quilt's list.</summary>
    private static ImmutableArray<string> TopRoles(Quilt quilt)
    {
        var used = quilt.Blocks.SelectMany(block => block.Patches).Select(patch => patch.Role).ToHashSet(StringComparer.Ordinal);
        return [.. quilt.Roles.Select(role => role.Id).Where(used.Contains)];
    }
}
