using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Tests.Quilts;

/// <summary>Small quilts and blocks to vary in tests.</summary>
internal static class Samples
{
    public static Quilt Quilt(ImmutableArray<Block> blocks, Setting setting, params ImmutableArray<Border> borders) =>
        new(
            "Sample",
            null,
            LengthUnit.Inch,
            Length.Inches(0, 1, 4),
            Length.Inches(0, 1, 8),
            null,
            [new("light", "light", Value.Light), new("dark", "dark", Value.Dark)],
            blocks,
            setting,
            borders,
            new("dark", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("light", Length.Inches(4), Length.Inches(0, 1, 2), null),
            ImmutableSortedDictionary<string, string>.Empty,
            []
        );

    /// <summary>A block of one patch.</summary>
    public static Block Whole(string id, Length width, Length height) =>
        Of(id, width, height, Polygon.Rectangle(0, 0, width, height));

    /// <summary>A block of polygons, light and dark in turn.</summary>
    public static Block Of(string id, Length width, Length height, params IEnumerable<Polygon> patches) =>
        new(
            id,
            id,
            width,
            height,
            new(1, 1),
            [.. patches.Select((shape, i) => new BlockPatch($"{i + 1}", i % 2 == 0 ? "light" : "dark", shape.Corners, []))]
        );

    /// <summary>A whole top as if it were one block, with every patch where it lies.</summary>
    public static Block WholeTop(Design design)
    {
        var shapes = design.Blocks.ToDictionary(b => b.Id, b => b.Patches);
        return Of(
            "top",
            design.Width,
            design.Height,
            design
                .Placements.SelectMany(place => shapes[place.Block].Select(p => p.Shape.Moved(place.Motion)))
                .Concat(design.Patches.Select(p => p.Shape))
        );
    }
}
