using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Checking.Tests;

/// <summary>
/// A bound by cases, against the proof's contract worked out by trying everything, and proofs of which one number or entry
/// is wrong.
/// </summary>
public sealed class CaseBoundTest
{
    private const int Width = 12;
    private const long Scale = 8;

    private sealed record Item(int Width, int Height, int Count, long Dual);

    private static readonly Gen<Item[]> Items = Gen.Select(Gen.Int[1, 12], Gen.Int[1, 9], Gen.Int[1, 6], Gen.Long[0, 40], (w, h, count, dual) => new Item(w, h, count, dual))
        .Array[1, 4];

    [Fact]
    public void A_bound_by_cases_is_what_trying_everything_gives() =>
        Gen.Select(Items, Gen.Int[0, 3], Gen.Int[0, 1_000_000])
            .Sample(
                (items, splits, seed) =>
                {
                    var random = new Random(seed);
                    var (cases, least) = Tree(items, random, splits, Heights(items).ToDictionary(h => h, h => (Least: 0, Most: items.Where(x => x.Height == h).Sum(x => x.Count))));
                    var bound = TryEverything.NextSum(Heights(items), BigInteger.Max(0, least));
                    return Refusal(items, cases, bound) is null && Refusal(items, cases, bound + 1) is not null && Refusal(items, cases, bound - 1) is not null;
                },
                iter: 300
            );

    /// <summary>Five pieces, two to a strip 9 units high: the linear program says 2 1/2 strips, and there are at most 2 or at least 3.</summary>
    private static readonly Item[] Five = [new(6, 9, 5, 0)];

    private static ImmutableArray<ProofCase> ByHand { get; } =
        [
            new() { Split = new(Unit * 9, 2) },
            new() { Leaf = new([9 * Scale], [-9 * Scale]) },
            new() { Leaf = new([0], [9 * Scale]) },
        ];

    [Fact]
    public void Cases_by_hand_prove_three_strips() => Assert.Null(Refusal(Five, ByHand, 27));

    [Fact]
    public void What_a_strip_is_worth_may_not_be_more_than_its_height()
    {
        for (var leaf = 1; leaf <= 2; leaf++)
        {
            var one = ByHand[leaf].Leaf!;
            Assert.Equal("check.cloth.bound-cases", Refusal(Five, ByHand.SetItem(leaf, new() { Leaf = one with { Duals = [one.Duals[0] + 1] } }), 27));
            Assert.Equal("check.cloth.bound-cases", Refusal(Five, ByHand.SetItem(leaf, new() { Leaf = one with { HeightDuals = [one.HeightDuals[0] + 1] } }), 27));
        }
    }

    [Fact]
    public void Cases_that_leave_plans_out_or_are_no_tree_are_refused()
    {
        (string Rule, ImmutableArray<ProofCase> Cases)[] wrong =
        [
            ("check.cloth.bound-cases", []),
            ("check.cloth.bound-cases", ByHand.RemoveAt(2)),
            ("check.cloth.bound-cases", ByHand.RemoveAt(0)),
            ("check.cloth.bound-cases", ByHand.Add(ByHand[2])),
            ("check.cloth.bound-cases", ByHand.SetItem(0, new())),
            ("check.cloth.bound-cases", ByHand.SetItem(0, ByHand[0] with { Leaf = ByHand[1].Leaf })),
            ("check.cloth.bound-cases", ByHand.SetItem(0, new() { Split = new(Unit * 8, 2) })),
            ("check.cloth.bound-cases", ByHand.SetItem(0, new() { Split = new(Unit * 9 / 2, 2) })),
            ("check.cloth.bound-cases", ByHand.SetItem(0, new() { Split = new(Unit * 9, -1) })),
            ("check.cloth.bound-cases", ByHand.SetItem(1, new() { Leaf = new([], [-9 * Scale]) })),
            ("check.cloth.bound-cases", ByHand.SetItem(1, new() { Leaf = new([-1], [0]) })),
            ("check.cloth.bound-cases", ByHand.SetItem(1, new() { Leaf = new([9 * Scale], []) })),
            // Three strips are not in the first case, nor two in the second: then the bound is two.
            ("check.cloth.bound", ByHand.SetItem(0, new() { Split = new(Unit * 9, 3) })),
            ("check.cloth.bound", ByHand.SetItem(0, new() { Split = new(Unit * 9, 1) })),
            ("check.cloth.bound", [ByHand[0], ByHand[2], ByHand[1]]),
            ("check.cloth.bound-too-large", [.. Enumerable.Repeat(ByHand[0], 20_000)]),
        ];
        Assert.All(wrong, mutant => Assert.Equal(mutant.Rule, Refusal(Five, mutant.Cases, 27)));
    }

    /// <summary>A thousand cases of a knapsack of three million cells would keep the checker busy for a minute: it says so at once.</summary>
    [Fact]
    public void Cases_that_would_take_too_long_are_not_worked_out()
    {
        var fine = Unit / 1_000_000;
        var leaf = new ProofCase { Leaf = new([0], [0]) };
        ImmutableArray<ProofCase> cases = [.. Enumerable.Repeat(new[] { new ProofCase { Split = new(fine, 0) }, leaf }, 500).SelectMany(pair => pair), leaf];
        var cloth = Cloth([new(1, 1, 1, 0)], cases, 0);
        cloth = cloth with
        {
            Terms = cloth.Terms with { UsableWidth = fine * 3_000_000 },
            Demand = [cloth.Demand[0] with { Width = fine, Height = fine }],
            Proof = cloth.Proof with { Unit = fine },
        };

        var findings = PlanChecker.Check(Sampler.Plan with { Sewing = new([]), Cloths = [cloth] }).Findings;

        Assert.Contains("check.cloth.bound-too-large", findings.Select(f => f.Rule));
    }

    private static Length Unit => Length.Inches(0, 1, 2);

    /// <summary>A tree that holds, with random duals, and the least worth of its leaves.</summary>
    private static (ImmutableArray<ProofCase> Cases, BigInteger Least) Tree(Item[] items, Random random, int splits, Dictionary<int, (int Least, int Most)> limits)
    {
        if (splits > 0)
        {
            var height = Heights(items)[random.Next(Heights(items).Length)];
            var (least, most) = limits[height];
            var atMost = random.Next(0, most + 2);
            var (fewer, one) = Tree(items, random, splits - 1, new(limits) { [height] = (least, Math.Min(most, atMost)) });
            var (more, other) = Tree(items, random, random.Next(splits), new(limits) { [height] = (Math.Max(least, atMost + 1), most) });
            return ([new() { Split = new(Unit * height, atMost) }, .. fewer, .. more], BigInteger.Min(one, other));
        }

        Item[] valued = [.. items.Select(x => x with { Dual = random.Next(0, 40) })];
        long[] heights = [.. Heights(items).Select(h => (h * Scale) - TryEverything.Best([.. valued.Where(w => w.Height <= h).Select(w => (w.Width, w.Count, w.Dual))], Width) - random.Next(0, 20))];
        var worth = valued.Sum(x => x.Count * x.Dual) + Heights(items).Zip(heights, (h, dual) => dual * (dual > 0 ? limits[h].Least : limits[h].Most)).Sum();
        return ([new() { Leaf = new([.. valued.Select(x => x.Dual)], [.. heights]) }], new Rational(worth, Scale).Ceiling());
    }

    /// <summary>The rule by which the bound is refused; null where it is taken.</summary>
    private static string? Refusal(Item[] items, ImmutableArray<ProofCase> cases, BigInteger bound) =>
        PlanChecker
            .Check(Sampler.Plan with { Sewing = new([]), Cloths = [Cloth(items, cases, bound)] })
            .Findings.Select(f => f.Rule)
            .FirstOrDefault(rule => rule.StartsWith("check.cloth.bound", StringComparison.Ordinal));

    /// <summary>One strip as high as everything, so that no bound is above the plan.</summary>
    private static ClothPlan Cloth(Item[] items, ImmutableArray<ProofCase> cases, BigInteger bound)
    {
        var cloth = Sampler.Plan.Cloths[0];
        return cloth with
        {
            Terms = cloth.Terms with { UsableWidth = (Unit * Width) + Length.Inches(0, 1, 4) },
            Demand = [.. items.Select((x, i) => new ClothDemand(new($"piece/{i}"), $"A{i}", Unit * x.Width, Unit * x.Height, x.Count, MayTurn: false))],
            Strips = [cloth.Strips[0] with { Height = Unit * 100_000, Times = 1 }],
            Proof = new(ProofStatus.Within, Unit * new Rational(bound, 1), Unit, Scale, [], "by hand", 0, "done", Searched: false) { Cases = cases },
        };
    }

    private static int[] Heights(Item[] items) => [.. items.Select(x => x.Height).Distinct().Order()];
}
