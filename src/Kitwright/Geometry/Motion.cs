using Kitwright.Measure;

namespace Kitwright.Geometry;

/// <summary>
/// An exact rigid motion of the plane: x' = XX·x + XY·y + DX, y' = YX·x + YY·y + DY. A motion that mirrors turns the
/// cloth over.
/// </summary>
/// <remarks>
/// Equality is by parts. <c>default</c> is not a motion (it sends all points to the origin and is not rigid); use
/// <see cref="Identity"/>.
/// </remarks>
public readonly record struct Motion(Surd XX, Surd XY, Surd YX, Surd YY, Surd DX, Surd DY)
{
    public static Motion Identity { get; } = new(1, 0, 0, 1, 0, 0);

    /// <summary>True where the motion shows the other face of the cloth.</summary>
    public bool Mirrors => ((XX * YY) - (XY * YX)).Sign < 0;

    /// <summary>
    /// True where the four factors keep lengths and angles; a motion from a file may be anything. The factories here
    /// and their compositions always are rigid.
    /// </summary>
    public bool IsRigid =>
        (XX * XX) + (YX * YX) == Rational.One
        && (XY * XY) + (YY * YY) == Rational.One
        && ((XX * XY) + (YX * YY)).IsZero;

    public static Motion Shift(Surd dx, Surd dy) => new(1, 0, 0, 1, dx, dy);

    /// <summary>Counterclockwise about the origin by quarter turns.</summary>
    public static Motion QuarterTurns(int turns) =>
        (((turns % 4) + 4) % 4) switch
        {
            0 => Identity,
            1 => new(0, -1, 1, 0, 0, 0),
            2 => new(-1, 0, 0, -1, 0, 0),
            _ => new(0, 1, -1, 0, 0, 0),
        };

    /// <summary>Counterclockwise about the origin by eighths of a turn (45 degrees each).</summary>
    public static Motion EighthTurns(int turns)
    {
        var quarter = QuarterTurns((int)Math.Floor(turns / 2.0));
        if (turns % 2 == 0)
        {
            return quarter;
        }

        var half = Surd.OfRoot2(new(1, 2));
        return new Motion(half, -half, half, half, 0, 0).Then(quarter);
    }

    /// <summary>The mirror image in a line.</summary>
    public static Motion Reflect(Line line)
    {
        var d = line.Step;
        var square = Point.Dot(d, d);
        Surd cos = ((d.X * d.X) - (d.Y * d.Y)) / square,
            sin = 2 * d.X * d.Y / square;
        var p = line.From;
        return new(cos, sin, sin, -cos, p.X - (cos * p.X) - (sin * p.Y), p.Y - (sin * p.X) + (cos * p.Y));
    }

    /// <summary>This motion, and then the other.</summary>
    public Motion Then(Motion next) =>
        new(
            (next.XX * XX) + (next.XY * YX),
            (next.XX * XY) + (next.XY * YY),
            (next.YX * XX) + (next.YY * YX),
            (next.YX * XY) + (next.YY * YY),
            (next.XX * DX) + (next.XY * DY) + next.DX,
            (next.YX * DX) + (next.YY * DY) + next.DY
        );

    public Motion Inverse()
    {
        // The matrix of a rigid motion is inverted by swapping across its diagonal.
        Surd dx = -((XX * DX) + (YX * DY)),
            dy = -((XY * DX) + (YY * DY));
        return new(XX, YX, XY, YY, dx, dy);
    }

    // Most motions turn by quarters, if at all: half of the products are then nothing.
    public Point Apply(Point p) =>
        XY.IsZero && YX.IsZero ? new((XX * p.X) + DX, (YY * p.Y) + DY)
        : XX.IsZero && YY.IsZero ? new((XY * p.Y) + DX, (YX * p.X) + DY)
        : new((XX * p.X) + (XY * p.Y) + DX, (YX * p.X) + (YY * p.Y) + DY);

    public Line Apply(Line line) => new(Apply(line.From), Apply(line.To));
}
