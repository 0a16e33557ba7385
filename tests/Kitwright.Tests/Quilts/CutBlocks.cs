using System.Collections.Immutable;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Tests.Quilts;

/// <summary>Random blocks that patches fill exactly, by cutting a square from edge to edge again and again.</summary>
internal static class CutBlocks
{
    /// <summary>A block of 12 in with 2 to 30 patches; some cuts stand at multiples of √2, some patches are triangles.</summary>
    public static Gen<Block> Guillotine { get; } =
        from choices in Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[1, 15], Gen.Int[0, 3]).Array[1, 29]
        select Cut(choices);

    /// <summary>Those of them whose fractions a quilt file may hold: cut after cut makes them finer.</summary>
    public static Gen<Block> InAFile { get; } =
        Guillotine.Where(block => block.Patches.SelectMany(p => p.Corners).SelectMany(c => new[] { c.X, c.Y }).All(IsFileable));

    // In centimeters (127/50 of an inch's number) a fraction may be fifty times as fine.
    private static bool IsFileable(Surd part) =>
        new[] { part.One, part.Root2, part.Root3, part.Root6 }.All(r => r.Denominator * 50 <= QuiltLimits.Denominator);

    /// <summary>The block with one corner of one patch moved inside the block.</summary>
    public static Gen<Block> OneCornerMoved { get; } =
        from block in Guillotine
        from at in Gen.Int[0, 1_000_000]
        from dx in Gen.Int[-3, 3]
        from dy in Gen.Int[-3, 3]
        where dx != 0 || dy != 0
        let moved = Move(block, at, new(new Rational(dx, 8), new Rational(dy, 8)))
        where moved is not null
        select moved;

    private static Block Cut((int Which, int At, int How)[] choices)
    {
        var patches = new List<Polygon> { Polygon.Rectangle(0, 0, 12, 12) };
        foreach (var (which, at, how) in choices)
        {
            var index = which % patches.Count;
            var patch = patches[index];
            if (patch.Corners.Length == 4)
            {
                patches.RemoveAt(index);
                patches.AddRange(Split(patch, at, how));
            }
        }

        return Samples.Of("random", Length.Inches(12), Length.Inches(12), patches);
    }

    private static IEnumerable<Polygon> Split(Polygon rectangle, int sixteenths, int how)
    {
        var (low, high) = rectangle.Bounds();
        // Part of the way, rational or not: k/16, or k/32 of √2.
        var part = how == 2 ? Surd.OfRoot2(new(sixteenths, 32)) : new Surd(new Rational(sixteenths, 16));
        Surd x = low.X + ((high.X - low.X) * part),
            y = low.Y + ((high.Y - low.Y) * part);
        return how switch
        {
            0 => [Polygon.Rectangle(low.X, low.Y, x, high.Y), Polygon.Rectangle(x, low.Y, high.X, high.Y)],
            1 or 2 => [Polygon.Rectangle(low.X, low.Y, high.X, y), Polygon.Rectangle(low.X, y, high.X, high.Y)],
            _ => [new([low, new(high.X, low.Y), high]), new([low, high, new(low.X, high.Y)])],
        };
    }

    private static Block? Move(Block block, int at, Point step)
    {
        var patch = at % block.Patches.Length;
        var corner = at % block.Patches[patch].Corners.Length;
        var moved = block.Patches[patch].Corners[corner] + step;
        var outline = Polygon.Rectangle(0, 0, block.Width, block.Height);
        return outline.Where(moved) == Side.Outside
            ? null
            : block with
            {
                Patches = block.Patches.SetItem(
                    patch,
                    block.Patches[patch] with { Corners = block.Patches[patch].Corners.SetItem(corner, moved) }
                ),
            };
    }

    /// <summary>The block in its eight positions: four turns, each also mirrored.</summary>
    public static IEnumerable<Block> Positions(Block block)
    {
        var mirror = new Motion(-1, 0, 0, 1, block.Width, 0);
        for (var turns = 0; turns < 4; turns++)
        {
            var turn = Cells.Turned(turns, block.Width, block.Height);
            yield return Moved(block, turn, turns);
            yield return Moved(block, mirror.Then(turn), turns);
        }
    }

    private static Block Moved(Block block, Motion motion, int turns) =>
        block with
        {
            Width = turns % 2 == 0 ? block.Width : block.Height,
            Height = turns % 2 == 0 ? block.Height : block.Width,
            Patches =
            [
                .. block.Patches.Select(p =>
                    p with
                    {
                        Corners = [.. p.Corners.Select(motion.Apply)],
                        Arcs = [.. p.Arcs.Select(a => new Arc(a.Edge, motion.Apply(a.Center), a.Clockwise ^ motion.Mirrors))],
                    }
                ),
            ],
        };
}
