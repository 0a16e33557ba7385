using Kitwright.Geometry;

namespace Kitwright.Pressing;

/// <summary>A place or a step in inches, y up, in floating point: where seams lie, never how long a piece is cut.</summary>
/// <remarks>
/// Exact coordinates come in and only yes and no go out: whether two seams meet. Patches are no finer than a hundredth
/// of an inch, and <see cref="Near"/> is a ten-thousandth of that.
/// </remarks>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>Inches within which two places are one.</summary>
    public const double Near = 1e-6;

    public double Length => Math.Sqrt(Dot(this, this));

    public Spot Unit => this * (1 / Length);

    /// <summary>The step to the left of this one.</summary>
    public Spot Left => new(-Y, X);

    public static Spot Of(Point point) => new(point.X.ToDouble(), point.Y.ToDouble());

    public static Spot operator +(Spot p, Spot q) => new(p.X + q.X, p.Y + q.Y);

    public static Spot operator -(Spot p, Spot q) => new(p.X - q.X, p.Y - q.Y);

    public static Spot operator *(Spot p, double factor) => new(p.X * factor, p.Y * factor);

    public static double Dot(Spot p, Spot q) => (p.X * q.X) + (p.Y * q.Y);

    public static double Cross(Spot p, Spot q) => (p.X * q.Y) - (p.Y * q.X);

    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");

    public bool IsAt(Spot other) => Math.Abs(X - other.X) < Near && Math.Abs(Y - other.Y) < Near;
}

/// <summary>A directed line: a place on it and a step of one inch along it.</summary>
internal readonly record struct SpotLine(Spot From, Spot Step)
{
    public static SpotLine Of(Line line)
    {
        var from = Spot.Of(line.From);
        return new(from, (Spot.Of(line.To) - from).Unit);
    }

    /// <summary>Inches to the left of the line; negative to its right.</summary>
    public double Beside(Spot spot) => Spot.Cross(Step, spot - From);

    /// <summary>Inches along the line.</summary>
    public double Along(Spot spot) => Spot.Dot(Step, spot - From);

    public Spot At(double along) => From + (Step * along);

    public SpotLine Moved(Pose by) => new(by.Apply(From), by.Turned(Step));
}

/// <summary>A rigid motion in floating point.</summary>
internal readonly record struct Pose(double XX, double XY, double YX, double YY, double DX, double DY)
{
    public static Pose Of(Motion motion) =>
        new(
            motion.XX.ToDouble(),
            motion.XY.ToDouble(),
            motion.YX.ToDouble(),
            motion.YY.ToDouble(),
            motion.DX.ToDouble(),
            motion.DY.ToDouble()
        );

    public static Pose MirrorIn(SpotLine line)
    {
        double cos = (line.Step.X * line.Step.X) - (line.Step.Y * line.Step.Y),
            sin = 2 * line.Step.X * line.Step.Y;
        var p = line.From;
        return new(cos, sin, sin, -cos, p.X - (cos * p.X) - (sin * p.Y), p.Y - (sin * p.X) + (cos * p.Y));
    }

    public Spot Apply(Spot p) => Turned(p) + new Spot(DX, DY);

    public Spot Turned(Spot step) => new((XX * step.X) + (XY * step.Y), (YX * step.X) + (YY * step.Y));
}
