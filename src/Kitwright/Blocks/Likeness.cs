using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Quilts;

namespace Kitwright.Blocks;

/// <summary>
/// Whether two blocks are the same drawing: up to size, the eight positions of a square, and the names of roles.
/// </summary>
public static class Likeness
{
    /// <summary>Equal for blocks that are alike, and for no others: the least of the eight positions as text.</summary>
    public static string KeyOf(BookBlock block)
    {
        var scale = new Surd(new Measure.Rational(1, block.Grid.Columns));
        var motions =
            from turns in Enumerable.Range(0, 4)
            from mirror in new[] { false, true }
            let flip = mirror ? new Motion(-1, 0, 0, 1, 0, 0) : Motion.Identity
            select flip.Then(Motion.QuarterTurns(turns));
        return motions.Select(motion => Text(block, motion, scale)).Min(StringComparer.Ordinal)!;
    }

    private static string Text(BookBlock block, Motion motion, Surd scale)
    {
        Point Place(Point p) => motion.Apply(p * scale);
        var corners = block.Patches.SelectMany(p => p.Corners).Select(Place).ToArray();
        var low = new Point(corners.Min(c => c.X), corners.Min(c => c.Y));
        var patches = block
            .Patches.Select(p => (p.Role, Shape: Text(p, q => Place(q) - low, motion.Mirrors)))
            .OrderBy(p => p.Shape, StringComparer.Ordinal);
        // Roles are numbered by the first patch, in the order of shapes, that has them.
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        return string.Join(
            '\n',
            patches.Select(p =>
            {
                numbers.TryAdd(p.Role, numbers.Count);
                return $"{numbers[p.Role]}: {p.Shape}";
            })
        );
    }

    // Corners counterclockwise from the one that sorts first, each with the curve that leaves it.
    private static string Text(BlockPatch patch, Func<Point, Point> place, bool mirrors)
    {
        var count = patch.Corners.Length;
        var centers = new Point?[count];
        foreach (var arc in patch.Arcs)
        {
            centers[arc.Edge] = place(arc.Center);
        }

        var sides = Enumerable
            .Range(0, count)
            .Select(i => (From: place(patch.Corners[i]), To: place(patch.Corners[(i + 1) % count]), Center: centers[i], Clockwise: Clockwise(patch, i) ^ mirrors))
            .ToArray();
        if (new Polygon([.. sides.Select(s => s.From)]).TwiceSignedArea.Sign < 0)
        {
            sides = [.. sides.Reverse().Select(s => (s.To, s.From, s.Center, !s.Clockwise))];
        }

        var texts = sides.Select(s => s.Center is null ? $"{s.From}" : $"{s.From} {(s.Clockwise ? "cw" : "ccw")} {s.Center}").ToArray();
        var first = Array.IndexOf(texts, texts.Min(StringComparer.Ordinal));
        return string.Join(' ', texts[first..].Concat(texts[..first]));
    }

    private static bool Clockwise(BlockPatch patch, int edge) => patch.Arcs.Any(a => a.Edge == edge && a.Clockwise);
}
