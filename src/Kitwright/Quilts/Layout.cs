using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>Lays a quilt out: every block, sash, post and border at its finished place.</summary>
/// <remarks>
/// Coordinates are inches with the origin at the quilt's lower left corner and y up; rows and columns in ids count
/// from 1 at the upper left. A quilt that <see cref="QuiltRules"/> faults has no layout, and asking for it throws.
/// </remarks>
public static class Layout
{
    public static Design Of(Quilt quilt)
    {
        var around = quilt.Borders.Aggregate(Length.Zero, (sum, border) => sum + border.Width);
        var center = quilt.Setting.Kind switch
        {
            SettingKind.Straight => StraightSetting.Lay(quilt, around),
            _ when quilt.Setting.Sashing is { } sashing => SashedOnPointSetting.Lay(quilt, sashing, around),
            _ => OnPointSetting.Lay(quilt, around),
        };
        var patches = center.Patches.ToBuilder();
        var inner = center.Shape;
        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            patches.AddRange(BorderRing.Lay(quilt.Borders[i], i + 1, inner));
            inner = inner.Grown(quilt.Borders[i].Width);
        }

        return new(inner.Width, inner.Height, DrawBlocks(quilt, center), center.Placements, patches.ToImmutable());
    }

    /// <summary>Blocks laid as a setting says, by themselves: no border, and nothing said about cloth.</summary>
    public static Design Center(ImmutableArray<Block> blocks, Setting setting) =>
        Of(
            new(
                "",
                null,
                LengthUnit.Inch,
                Length.Inches(0, 1, 4),
                Length.Inches(0, 1, 8),
                null,
                [],
                blocks,
                setting,
                [],
                new("", Length.Inch, Length.Zero, StripGrain.Crosswise),
                new("", Length.Zero, Length.Inch, null),
                ImmutableSortedDictionary<string, string>.Empty,
                []
            )
        );

    private static ImmutableArray<BlockDesign> DrawBlocks(Quilt quilt, Center center)
    {
        var used = center.Placements.Select(p => p.Block).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from block in quilt.Blocks
            from mirror in new[] { false, true }
            let id = new Cell(block.Id, 0, mirror).DesignId()
            where used.Contains(id)
            select Draw(block, id, mirror),
        ];
    }

    private static BlockDesign Draw(Block block, string id, bool mirror)
    {
        var flip = mirror ? new Motion(-1, 0, 0, 1, block.Width, 0) : Motion.Identity;
        return new(
            id,
            block.Name,
            block.Width,
            block.Height,
            [
                .. block.Patches.Select(p =>
                    new Patch(PathOf(id, p.Id), p.Role, new Polygon(p.Corners).CounterClockwise().Moved(flip))
                    {
                        Curved = CurvedOutline.Of(p)?.Moved(flip),
                    }
                ),
            ]
        );
    }

    /// <summary>The path of a block's patch: <c>block/star/patch/7</c>.</summary>
    public static PathId PathOf(string block, string patch) => default(PathId).Child("block", block).Child("patch", patch);
}
