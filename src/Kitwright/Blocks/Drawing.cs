using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Blocks;

/// <summary>A block drawn by parameters, brought to a grid of whole units.</summary>
internal static class Drawing
{
    public static BookBlock Finish(
        string id,
        string name,
        BlockFamily family,
        string? source,
        Box outline,
        List<(string Role, ImmutableArray<Point> Corners)> patches
    )
    {
        var width = outline.Right - outline.Left;
        var height = outline.Top - outline.Bottom;
        var whole = Rational.One * (width.Denominator * height.Denominator);
        var shift = new Point(-outline.Left, -outline.Bottom);
        return new(
            id,
            name,
            family,
            source,
            new((int)(width * whole).Numerator, (int)(height * whole).Numerator),
            [.. patches.Select(p => p.Role).Distinct().Select(role => new Role(role, role, ValueOf(role)))],
            [.. patches.Select((p, i) => new BlockPatch($"{i + 1}", p.Role, [.. p.Corners.Select(c => (c + shift) * whole)], []))]
        );
    }

    private static Value? ValueOf(string role) =>
        role.StartsWith("light", StringComparison.Ordinal) ? Value.Light
        : role.StartsWith("dark", StringComparison.Ordinal) ? Value.Dark
        : null;
}
