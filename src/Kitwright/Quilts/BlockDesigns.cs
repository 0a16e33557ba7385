using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>
/// The blocks of a design by their ids: <c>star</c> as drawn, <c>star.mirror</c> its mirror image, <c>star.b2</c> brought
/// to the width of the second border.
/// </summary>
public static class BlockDesigns
{
    private const string Mirror = ".mirror";

    public static string IdOf(string block, int? border, bool mirror) => block + (border is null ? "" : $".b{border}") + (mirror ? Mirror : "");

    /// <summary>The id of the block in the quilt's file.</summary>
    public static string BlockOf(string design) => design.Split('.')[0];

    public static bool IsMirrored(string design) => design.EndsWith(Mirror, StringComparison.Ordinal);

    /// <summary>Number of the border whose width the block was brought to; null for a block at its own size.</summary>
    public static int? BorderOf(string design) =>
        design.Split('.').Skip(1).Where(part => part[0] == 'b').Select(part => int.TryParse(part[1..], out var n) ? (int?)n : null).FirstOrDefault();

    /// <summary>Every part in proportion.</summary>
    public static Block Scaled(Block block, Rational ratio) =>
        ratio == Rational.One
            ? block
            : block with
            {
                Width = block.Width * ratio,
                Height = block.Height * ratio,
                Patches =
                [
                    .. block.Patches.Select(patch =>
                        patch with
                        {
                            Corners = [.. patch.Corners.Select(corner => corner * ratio)],
                            Arcs = [.. patch.Arcs.Select(arc => arc with { Center = arc.Center * ratio })],
                        }
                    ),
                ],
            };

    internal static BlockDesign Draw(Block block, string id, bool mirror)
    {
        var flip = mirror ? new Motion(-1, 0, 0, 1, block.Width, 0) : Motion.Identity;
        return new(
            id,
            block.Name,
            block.Width,
            block.Height,
            [
                .. block.Patches.Select(p =>
                    new Patch(Layout.PathOf(id, p.Id), p.Role, new Polygon(p.Corners).CounterClockwise().Moved(flip))
                    {
                        Curved = CurvedOutline.Of(p)?.Moved(flip),
                    }
                ),
            ]
        );
    }
}
