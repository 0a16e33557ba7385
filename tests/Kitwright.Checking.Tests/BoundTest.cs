using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// The checker recomputes a bound as the proof's contract says. Here the same contract is worked out by trying
/// everything, for cloths so small that this can be done.
/// </summary>
public sealed class BoundTest
{
    private const int Width = 12;
    private const long Scale = 8;

    private sealed record Item(int Width, int Height, int Count, bool MayTurn, long Dual);

    private static readonly Gen<Item[]> Items = Gen.Select(
            Gen.Int[1, 12],
            Gen.Int[1, 12],
            Gen.Int[1, 6],
            Gen.Bool,
            Gen.Long[0, 40],
            (w, h, count, turn, dual) => new Item(w, h, count, turn, dual)
        )
        .Array[1, 4];

    [Fact]
    public void A_bound_from_duals_is_what_trying_everything_gives() =>
        Items.Sample(items => Holds(items, byArea: false, Least(items, Farley(items))), iter: 300);

    [Fact]
    public void A_bound_by_area_is_what_the_sum_gives() =>
        Items.Sample(
            items => Holds(items, byArea: true, Least(items, Up(items.Sum(i => i.Count * i.Width * i.Height), Width))),
            iter: 300
        );

    /// <summary>The bound as it should be is taken; one unit more or less is not.</summary>
    private static bool Holds(Item[] items, bool byArea, BigInteger bound) =>
        !Refused(items, byArea, bound) && Refused(items, byArea, bound + 1) && Refused(items, byArea, bound - 1);

    private static bool Refused(Item[] items, bool byArea, BigInteger bound) =>
        PlanChecker
            .Check(Sampler.Plan with { Sewing = new([]), Cloths = [Cloth(items, byArea, bound)] })
            .Findings.Any(f => f.Rule.StartsWith("check.cloth.bound", StringComparison.Ordinal));

    /// <summary>One strip as high as everything, so that no bound is above the plan.</summary>
    private static ClothPlan Cloth(Item[] items, bool byArea, BigInteger bound)
    {
        var cloth = Sampler.Plan.Cloths[0];
        var unit = Length.Inches(0, 1, 2);
        return cloth with
        {
            Terms = cloth.Terms with { UsableWidth = (unit * Width) + Length.Inches(0, 1, 4) },
            Demand =
            [
                .. items.Select((x, i) => new ClothDemand(new($"piece/{i}"), $"A{i}", unit * x.Width, unit * x.Height, x.Count, x.MayTurn)),
            ],
            Strips = [cloth.Strips[0] with { Height = unit * 100_000, Times = 1 }],
            Proof = new(ProofStatus.Within, unit * new Rational(bound, 1), unit, Scale, byArea ? [] : [.. items.Select(x => x.Dual)], "by hand", 0, "done", Searched: false),
        };
    }

    private static BigInteger Farley(Item[] items)
    {
        var ways = Ways(items);
        var rho = Rational.One;
        foreach (var height in ways.Select(w => w.Height).Distinct())
        {
            var value = TryEverything.Best([.. ways.Where(w => w.Height <= height).Select(w => (w.Width, w.Count, w.Dual))], Width);
            rho = Rational.Max(rho, new(value, height * Scale));
        }

        return (new Rational(items.Sum(x => x.Count * x.Dual), Scale) / rho).Ceiling();
    }

    private static Item[] Ways(Item[] items) =>
        [
            .. items
                .SelectMany(x => x.MayTurn && x.Width != x.Height ? new[] { x, x with { Width = x.Height, Height = x.Width } } : [x])
                .Where(x => x.Width <= Width),
        ];

    private static BigInteger Least(Item[] items, BigInteger bound)
    {
        int[] heights = [.. Ways(items).Select(w => w.Height).Distinct()];
        return heights.Length == 0 ? bound : TryEverything.NextSum(heights, bound);
    }

    private static BigInteger Up(int area, int width) => (area + width - 1) / width;
}
