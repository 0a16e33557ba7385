using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;

namespace Kitwright.Settings;

/// <summary>Which of the eight positions of a square leave a block looking as it did. Always a group.</summary>
/// <remarks>
/// A block looks the same where each cloth covers the same part of it, wherever the seams within a cloth run: a log
/// cabin with two logs of one fabric a round is symmetric about its diagonal. The test is exact: two regions are one
/// if, and only if, the sides of the one and the reversed sides of the other match piece by piece.
/// </remarks>
public static class BlockSymmetry
{
    /// <param name="cloth">What fills a role; roles with equal answers look alike. Null tells every role from the others.</param>
    /// <returns>At least the identity; of a block that is no square the half turn and upright and level mirrors only.</returns>
    public static ImmutableArray<Position> Of(Block block, Func<string, string>? cloth = null)
    {
        var regions = block
            .Patches.GroupBy(p => cloth?.Invoke(p.Role) ?? p.Role, StringComparer.Ordinal)
            .Select(patches => patches.SelectMany(Sides).ToList())
            .ToList();
        var isSquare = block.Width == block.Height;
        return
        [
            .. Position.All.Where(position =>
                (isSquare || position.Turns % 2 == 0) && regions.TrueForAll(sides => IsKept(sides, InPlace(position, block), position.Mirror))
            ),
        ];
    }

    private static Motion InPlace(Position position, Block block)
    {
        var half = new Measure.Rational(1, 2);
        Measure.Length x = block.Width * half,
            y = block.Height * half;
        return Motion.Shift(-x, -y).Then(position.Motion()).Then(Motion.Shift(x, y));
    }

    private static bool IsKept(List<Edge> sides, Motion motion, bool mirrors)
    {
        // What a mirror shows runs the other way round, which is the reversed direction already.
        var against = sides.Select(side => Moved(side, motion, mirrors)).Select(side => mirrors ? side : side.Reversed);
        return EdgeNet.Unmatched([.. sides, .. against]).Count == 0;
    }

    private static Edge Moved(Edge side, Motion motion, bool mirrors) =>
        new(
            motion.Apply(side.From),
            motion.Apply(side.To),
            side.Center is { } center ? motion.Apply(center) : null,
            side.IsArc && side.Clockwise != mirrors,
            side.Owner
        );

    private static IEnumerable<Edge> Sides(BlockPatch patch) =>
        PatchShape.Trace(patch, 0, out _, out _) ?? throw new ArgumentException($"Patch {patch.Id} is no patch; check the block first.");
}
