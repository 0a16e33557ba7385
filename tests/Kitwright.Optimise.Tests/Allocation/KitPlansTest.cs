using CsCheck;
using Kitwright.Checking.Kits;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Optimise.Allocation;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>Whole kit plans, made with the search, pass the independent check.</summary>
public sealed class KitPlansTest
{
    private static readonly Gen<Shelf> Shelves =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2_400]).Array[1, 8].Select(bolts => new Shelf(
            [.. Enumerable.Range(0, 3).Select(i => new Fabric($"F{i}", $"F{i}", Length.Inches(44), 1, "#000000", new(PrintKind.Solid, "#000000", 1)))],
            [.. bolts.Select((b, i) => new Bolt($"b{i}", $"F{b.Item1}", $"L{b.Item2}", Length.Inches(new Rational(b.Item3, 8))))]
        ));

    private static readonly Gen<Need> Needs =
        Gen.Select(Gen.Int[0, 2], Gen.Enum<NeedKind>(), Gen.Int[0, 1], Gen.Int[40, 500]).Select(n =>
            new Need($"{(char)('A' + n.Item1)}", n.Item2, [$"role{n.Item3}"], $"F{n.Item1}", Length.Inches(new Rational(n.Item4, 8))));

    private static readonly Gen<KitRequest> Requests =
        Gen.Select(Needs.Array[1, 4], Gen.Int[0, 5]).Array[1, 3].Select(lines =>
            new KitRequest([.. lines.Select((l, i) => new KitLine($"c{i}", null, new([.. l.Item1], null), l.Item2))]));

    [Fact]
    public void Pass_the_independent_check() =>
        Gen.Select(Shelves, Requests).Sample(
            (shelf, request) =>
            {
                var plan = KitPlanning.Plan(shelf, request, KitTerms.Usual, CpSatBolts.Solver(BoltBudget.Typing)).Value!;
                Assert.Empty(KitChecker.Check(shelf, request, plan));
            },
            iter: 150
        );
}
