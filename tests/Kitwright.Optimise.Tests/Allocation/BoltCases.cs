using System.Collections.Immutable;
using CsCheck;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>Small problems of bolts and kits, made up or written by hand.</summary>
internal static class BoltCases
{
    public static BoltProblem Problem(
        ImmutableArray<Bolt> bolts,
        ImmutableArray<KitCuts> kits,
        int loss = 1,
        int useful = 9,
        AllocationAim aim = AllocationAim.Whole
    ) => new("F", bolts, kits, Length.Inches(loss), Length.Inches(useful), aim);

    public static Bolt Bolt(string id, string lot, int inches) => new(id, "F", lot, Length.Inches(inches));

    /// <summary>Kits that take each of the lengths (inches) as a set of its own.</summary>
    public static KitCuts FreeKits(string colorway, int count, params int[] inches) =>
        new(colorway, count, [.. inches.Select((length, i) => new LotSet([Cut(i, length)]))]);

    /// <summary>Kits whose lengths (inches) must all be of one lot.</summary>
    public static KitCuts OneLotKits(string colorway, int count, params int[] inches) =>
        new(colorway, count, [new([.. inches.Select((length, i) => Cut(i, length))])]);

    public static KitCut Cut(int need, int inches) => new(need, "A", NeedKind.Top, Length.Inches(inches));

    /// <summary>One to three bolts of at most two lots, at most five cuts; asymmetric lengths.</summary>
    public static Gen<BoltProblem> Small { get; } =
        from bolts in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 1]).Array[1, 3]
        from kits in Gen.Select(Gen.Int[0, 2], Gen.Int[5, 30].Array[1, 2], Gen.Bool).Array[1, 2]
        from loss in Gen.Int[0, 2]
        from useful in Gen.Int[0, 12]
        select Problem(
            [.. bolts.Select((b, i) => Bolt($"b{i}", $"lot{b.Item2}", b.Item1))],
            [.. kits.Select((k, i) => k.Item3 ? OneLotKits($"c{i}", k.Item1, k.Item2) : FreeKits($"c{i}", k.Item1, k.Item2))],
            loss,
            useful
        );
}
