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
        var center = CenterOf(quilt, Length.Zero);
        var inner = center.Shape;
        var patches = center.Patches.ToBuilder();
        var placements = center.Placements.ToBuilder();
        var blocks = new Dictionary<string, BlockDesign>(StringComparer.Ordinal);
        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            if (quilt.Borders[i].Units is null)
            {
                patches.AddRange(BorderRing.Lay(quilt.Borders[i], i + 1, inner));
                inner = inner.Grown(quilt.Borders[i].Width);
                continue;
            }

            var laid = new UnitBorder(quilt, i + 1, inner).Lay();
            patches.AddRange(laid.Patches);
            placements.AddRange(laid.Placements);
            inner = laid.Outer;
            foreach (var block in laid.Blocks)
            {
                blocks.TryAdd(block.Id, block);
            }
        }

        return AtOrigin(inner, [.. DrawBlocks(quilt, center), .. blocks.Values.Where(b => !Lies(center, b.Id))], placements, patches);
    }

    /// <summary>Width and height of what lies inside the borders, as a frame.</summary>
    internal static Frame CenterShape(Quilt quilt) => CenterOf(quilt, Length.Zero).Shape;

    private static Center CenterOf(Quilt quilt, Length around) =>
        quilt.Setting.Kind switch
        {
            SettingKind.Straight => StraightSetting.Lay(quilt, around),
            _ when quilt.Setting.Sashing is { } sashing => SashedOnPointSetting.Lay(quilt, sashing, around),
            _ => OnPointSetting.Lay(quilt, around),
        };

    private static bool Lies(Center center, string block) => center.Placements.Any(p => p.Block == block);

    // Borders are laid from the center out, which is what decides their size; the quilt's corner then becomes the origin.
    private static Design AtOrigin(Frame outer, ImmutableArray<BlockDesign> blocks, IEnumerable<Placement> placements, IEnumerable<Patch> patches)
    {
        var home = Motion.Shift(-outer.Left, -outer.Bottom);
        return new(
            outer.Width,
            outer.Height,
            blocks,
            [.. placements.Select(p => p with { Motion = p.Motion.Then(home) })],
            [.. patches.Select(p => p with { Shape = p.Shape.Moved(home) })]
        );
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
            select BlockDesigns.Draw(block, id, mirror),
        ];
    }

    /// <summary>The path of a block's patch: <c>block/star/patch/7</c>.</summary>
    public static PathId PathOf(string block, string patch) => default(PathId).Child("block", block).Child("patch", patch);
}
