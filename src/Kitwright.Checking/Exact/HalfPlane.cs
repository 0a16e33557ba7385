using Kitwright.Geometry;

namespace Kitwright.Checking.Exact;

/// <summary>The points with A·x + B·y ≥ C, and the line that bounds them.</summary>
internal sealed class HalfPlane(Surd a, Surd b, Surd c)
{
    private readonly Exact.Near nearA = Exact.Near.Of(a);
    private readonly Exact.Near nearB = Exact.Near.Of(b);
    private readonly Exact.Near nearC = Exact.Near.Of(c);

    public Surd A => a;
    public Surd B => b;
    public Surd C => c;

    /// <summary>What lies to the left of the line's direction, or on it.</summary>
    public static HalfPlane LeftOf(Line line)
    {
        Surd a = line.From.Y - line.To.Y,
            b = line.To.X - line.From.X;
        return new(a, b, (a * line.From.X) + (b * line.From.Y));
    }

    public HalfPlane Opposite => new(-a, -b, -c);

    /// <summary>The half-plane that the motion takes to this one.</summary>
    public HalfPlane Before(Motion motion) =>
        Rigid.IsStill(motion)
            ? this
            : new(
                (a * motion.XX) + (b * motion.YX),
                (a * motion.XY) + (b * motion.YY),
                c - (a * motion.DX) - (b * motion.DY)
            );

    /// <summary>The distance from the line times the length of (A, B), positive inside.</summary>
    public Surd At(Point p) => (a * p.X) + (b * p.Y) - c;

    public Exact.Near Near(Shape shape, int corner) =>
        (nearA * shape.NearX(corner)) + (nearB * shape.NearY(corner)) - nearC;

    /// <summary>1 inside, 0 on the line, −1 outside; exact.</summary>
    public int SideOf(Shape shape, int corner) => Near(shape, corner).Sign ?? At(shape[corner]).Sign;
}
