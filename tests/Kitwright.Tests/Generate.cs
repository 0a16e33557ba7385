using System.Numerics;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Tests;

/// <summary>Random values for laws: mostly of the sizes that quilts have, now and then far beyond a long.</summary>
public static class Generate
{
    private static readonly Gen<BigInteger> Huge = Gen.Select(Gen.Long, Gen.Long, Gen.Int[0, 90], (x, y, shift) => ((BigInteger)x << shift) + y);

    public static readonly Gen<BigInteger> Integers = Gen.Frequency(
        (6, Gen.Int[-200, 200].Select(i => (BigInteger)i)),
        (2, Gen.Long.Select(i => (BigInteger)i)),
        (1, Huge)
    );

    private static readonly Gen<BigInteger> Denominator = Gen.Frequency(
        (6, Gen.Int[1, 64].Select(i => (BigInteger)i)),
        (2, Gen.Long[1, long.MaxValue].Select(i => (BigInteger)i)),
        (1, Huge.Where(i => i.Sign > 0))
    );

    public static readonly Gen<Rational> Rationals = Gen.Select(Integers, Denominator, (n, d) => new Rational(n, d));

    public static readonly Gen<Rational> NonZero = Rationals.Where(r => !r.IsZero);

    /// <summary>Eighths, twelfths and the like of moderate size: what a quilt holds.</summary>
    public static readonly Gen<Rational> Small = Gen.Select(Gen.Int[-400, 400], Gen.Int[1, 24], (n, d) => new Rational(n, d));

    public static readonly Gen<Length> Lengths = Rationals.Select(Length.Inches);

    public static readonly Gen<Surd> Surds = Of(Gen.Frequency((3, Small), (1, Rationals)));

    /// <summary>Small parts only, where many are multiplied.</summary>
    public static readonly Gen<Surd> SmallSurds = Of(Small);

    public static readonly Gen<Point> Points = Gen.Select(SmallSurds, SmallSurds, (x, y) => new Point(x, y));

    public static readonly Gen<Line> Lines = Gen.Select(Points, Points, (p, q) => new Line(p, q)).Where(l => l.From != l.To);

    /// <summary>Shifts, eighth turns and mirror images at 45 degrees, composed.</summary>
    public static readonly Gen<Motion> Motions = Gen.Select(
        Gen.Int[-9, 9],
        Gen.Bool,
        Points,
        (turns, mirror, shift) =>
            (mirror ? Motion.Reflect(new(default, new(0, 1))) : Motion.Identity)
                .Then(Motion.EighthTurns(turns))
                .Then(Motion.Shift(shift.X, shift.Y))
    );

    private static Gen<Surd> Of(Gen<Rational> part)
    {
        var often0 = Gen.Frequency((1, Gen.Const(Rational.Zero)), (1, part));
        return Gen.Select(part, often0, often0, often0, (a, b, c, d) => new Surd(a, b, c, d));
    }
}
