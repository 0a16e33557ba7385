using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>Problems of the size that a shop has, with lengths that fit badly.</summary>
internal static class BoltBenchmarks
{
    /// <summary>Kits over several kinds of length between 10 and 70 in, bolts between 3 and 16 yd.</summary>
    public static BoltProblem Irregular(int bolts, int kinds, int kits, int seed)
    {
        var random = new Random(seed);
        return new(
            "F",
            [.. Enumerable.Range(0, bolts).Select(i => new Fabrics.Bolt($"b{i:00}", "F", $"lot{i % 3}", Length.Inches(new Rational(random.Next(108 * 8, 576 * 8), 8))))],
            [
                .. Enumerable.Range(0, kinds).Select(i => new KitCuts(
                    $"c{i}",
                    kits / kinds,
                    [new([new(0, "A", NeedKind.Top, Length.Inches(new Rational(random.Next(10 * 8, 70 * 8), 8)))])]
                )),
            ],
            Length.Inch,
            Length.Inches(9),
            AllocationAim.Whole
        );
    }
}
