using Kitwright.Geometry;

namespace Kitwright.Checking.Exact;

/// <summary>Rigid motions as the checker knows them: worked out here again, from the matrix alone.</summary>
internal static class Rigid
{
    public static Motion Still { get; } = new(1, 0, 0, 1, 0, 0);

    public static bool IsStill(Motion m) => m == Still;

    /// <summary>True where the matrix keeps lengths: its columns are of length one and at right angles.</summary>
    public static bool Keeps(Motion m) =>
        (m.XX * m.XX) + (m.YX * m.YX) == 1
        && (m.XY * m.XY) + (m.YY * m.YY) == 1
        && ((m.XX * m.XY) + (m.YX * m.YY)).IsZero;

    public static bool Mirrors(Motion m) => ((m.XX * m.YY) - (m.XY * m.YX)).Sign < 0;

    public static Motion Compose(Motion first, Motion then)
    {
        if (IsStill(first))
        {
            return then;
        }

        if (IsStill(then))
        {
            return first;
        }

        var composed = new Motion(
            (then.XX * first.XX) + (then.XY * first.YX),
            (then.XX * first.XY) + (then.XY * first.YY),
            (then.YX * first.XX) + (then.YY * first.YX),
            (then.YX * first.XY) + (then.YY * first.YY),
            (then.XX * first.DX) + (then.XY * first.DY) + then.DX,
            (then.YX * first.DX) + (then.YY * first.DY) + then.DY
        );
        Fineness.Check(composed);
        return composed;
    }

    /// <summary>The motion back. A rigid matrix is undone by its transpose.</summary>
    public static Motion Undo(Motion m) =>
        new(m.XX, m.YX, m.XY, m.YY, -((m.XX * m.DX) + (m.YX * m.DY)), -((m.XY * m.DX) + (m.YY * m.DY)));

    /// <summary>The mirror image in a line with normal (a, b): p − 2 (a·x + b·y − c) (a, b) / (a² + b²).</summary>
    public static Motion MirrorIn(Line line)
    {
        var side = HalfPlane.LeftOf(line);
        var square = (side.A * side.A) + (side.B * side.B);
        Surd a = 2 * side.A / square,
            b = 2 * side.B / square;
        var mirror = new Motion(
            1 - (a * side.A),
            -(a * side.B),
            -(b * side.A),
            1 - (b * side.B),
            a * side.C,
            b * side.C
        );
        Fineness.Check(mirror);
        return mirror;
    }
}
