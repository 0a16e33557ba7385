using BenchmarkDotNet.Attributes;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Bench;

/// <summary>
/// The exact numbers on which piecing and checking rest, on sizes as quilts have them: eighths and sixteenths of an
/// inch, and the same times √2.
/// </summary>
[MemoryDiagnoser]
public class NumbersBenchmark
{
    private const int Count = 1000;
    private readonly Rational[] rationals = new Rational[Count + 1];
    private readonly Surd[] plain = new Surd[Count + 1];
    private readonly Surd[] slanted = new Surd[Count + 1];
    private readonly Point[] points = new Point[Count];
    private readonly Polygon square = Polygon.Rectangle(-8, -8, 8, 8).Moved(Motion.EighthTurns(1));
    private readonly Motion turn = Motion.EighthTurns(1).Then(Motion.Shift(new Rational(25, 8), 4));

    [GlobalSetup]
    public void Setup()
    {
        var random = new Random(7);
        Rational Next() => new(random.Next(-800, 800), 1 << random.Next(5));
        for (var i = 0; i <= Count; i++)
        {
            rationals[i] = Next();
            plain[i] = Next();
            slanted[i] = new(Next(), Next(), default, default);
        }

        for (var i = 0; i < Count; i++)
        {
            points[i] = new(new Rational(random.Next(-200, 200), 16), new Rational(random.Next(-200, 200), 16));
        }
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public Rational RationalAddMultiply()
    {
        Rational sum = default;
        for (var i = 0; i < Count; i++)
        {
            sum += rationals[i] * rationals[i + 1];
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int RationalCompare()
    {
        var less = 0;
        for (var i = 0; i < Count; i++)
        {
            less += rationals[i] < rationals[i + 1] ? 1 : 0;
        }

        return less;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int PlainCompare() => Less(plain);

    [Benchmark(OperationsPerInvoke = Count)]
    public int SlantedCompare() => Less(slanted);

    [Benchmark(OperationsPerInvoke = Count)]
    public Surd PlainMultiply() => Last(plain);

    [Benchmark(OperationsPerInvoke = Count)]
    public Surd SlantedMultiply() => Last(slanted);

    [Benchmark(OperationsPerInvoke = Count)]
    public Point MovePoint()
    {
        Point last = default;
        foreach (var point in points)
        {
            last = turn.Apply(point);
        }

        return last;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int PointInPolygon()
    {
        var inside = 0;
        foreach (var point in points)
        {
            inside += square.Where(point) == Side.Inside ? 1 : 0;
        }

        return inside;
    }

    private static int Less(Surd[] values)
    {
        var less = 0;
        for (var i = 0; i < Count; i++)
        {
            less += values[i] < values[i + 1] ? 1 : 0;
        }

        return less;
    }

    private static Surd Last(Surd[] values)
    {
        Surd last = default;
        for (var i = 0; i < Count; i++)
        {
            last = values[i] * values[i + 1];
        }

        return last;
    }
}
