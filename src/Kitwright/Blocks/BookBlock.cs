using System.Collections.Immutable;
using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.Blocks;

/// <summary>A traditional block as the book holds it: drawn in units of its grid, so that it has every size.</summary>
/// <param name="Name">What the trade has long called it.</param>
/// <param name="Source">Where the name is from; null where it is from memory.</param>
/// <param name="Grid">Divisions across and down; the block is as many units wide and high.</param>
/// <param name="Roles">In the order of their first patch.</param>
/// <param name="Patches">In units from the lower left corner.</param>
public sealed record BookBlock(
    string Id,
    string Name,
    BlockFamily Family,
    string? Source,
    Grid Grid,
    ImmutableArray<Role> Roles,
    ImmutableArray<BlockPatch> Patches
)
{
    /// <summary>The block in a finished width; its height follows from the grid.</summary>
    public Block At(Length width)
    {
        var unit = width / Grid.Columns;
        return new(Id, Name, width, unit * Grid.Rows, Grid, [.. Patches.Select(p => Scaled(p, unit.InInches))]);
    }

    /// <summary>What the book's chapter for such blocks is called.</summary>
    public static Message ChapterOf(BlockFamily family) =>
        Message.Of($"block.family.{JsonNamingPolicy.KebabCaseLower.ConvertName(family.ToString())}");

    private static BlockPatch Scaled(BlockPatch patch, Rational unit) =>
        patch with
        {
            Corners = [.. patch.Corners.Select(c => c * unit)],
            Arcs = [.. patch.Arcs.Select(a => a with { Center = a.Center * unit })],
        };
}

/// <summary>How the book files its blocks: by what they are made of.</summary>
public enum BlockFamily
{
    FourPatch,
    NinePatch,
    HalfSquare,
    QuarterSquare,
    FlyingGeese,
    Star,
    SquareInSquare,
    Strips,
    LogCabin,
    Picture,
    Curved,
    SixtyDegrees,
}
