using System.Collections.Immutable;
using CsCheck;
using Kitwright.Kits;
using Kitwright.Optimise.Allocation;
using Xunit;
using static Kitwright.Optimise.Tests.Allocation.BoltCases;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>Where several fabrics are short, cloth goes to kits that come out whole.</summary>
public sealed class KitFillingTest
{
    private static readonly IBoltSolver Search = CpSatBolts.Solver(BoltBudget.Planning);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Two fabrics, each of which serves both lines.</summary>
    private static readonly Gen<ImmutableArray<BoltProblem>> Pairs =
        Gen.Select(Gen.Int[0, 50].Array[1, 2].Array[2], Gen.Int[5, 25].Array[2].Array[2], Gen.Int[1, 2].Array[2]).Select((bolts, lengths, wanted) =>
            ImmutableArray.Create(
                Problem([.. bolts[0].Select((b, i) => Bolt($"b{i}", "x", b))], [FreeKits("c0", wanted[0], lengths[0][0]), FreeKits("c1", wanted[1], lengths[0][1])]),
                Problem([.. bolts[1].Select((b, i) => Bolt($"b{i}", "x", b))], [FreeKits("c0", wanted[0], lengths[1][0]), FreeKits("c1", wanted[1], lengths[1][1])])
            ));

    [Fact]
    public void As_many_kits_are_filled_as_the_exhaustive_search_fills() =>
        Pairs.Sample(
            fabrics =>
            {
                var most = (
                    from first in Enumerable.Range(0, fabrics[0].Kits[0].Kits + 1)
                    from second in Enumerable.Range(0, fabrics[0].Kits[1].Kits + 1)
                    where fabrics.All(f => ExhaustiveSearch.Best(f with { Kits = [f.Kits[0] with { Kits = first }, f.Kits[1] with { Kits = second }] }).Unmet == 0)
                    select first + second
                ).Max();
                var found = Search.Fill(fabrics, Cancel);
                Assert.Equal((most, most), (found.Kits.Values.Sum(), found.AtMost));
                Assert.All(found.Allocations, a => Assert.Equal(found.Kits.Values, a.Figures.Served));
                var simple = BestFitDecreasing.Solver.Fill(fabrics, Cancel);
                Assert.InRange(most, simple.Kits.Values.Sum(), simple.AtMost);
            },
            iter: 200
        );

    [Fact]
    public void Promised_kits_are_served_before_the_ones_that_take_less()
    {
        // Room for one long cut or two short ones: fewest unmet cuts alone would take the short ones.
        var problem = Problem([Bolt("a", "x", 41)], [FreeKits("long", 1, 40), FreeKits("short", 2, 20)]);
        Assert.Equal([0, 2], Search.Allocate(problem, null, Cancel).Figures.Served);
        var promised = problem with { Kits = [problem.Kits[0] with { Promised = 1 }, problem.Kits[1]] };
        Assert.Equal([1, 0], Search.Allocate(promised, null, Cancel).Figures.Served);
        Assert.Equal([1, 0], BestFitDecreasing.Solve(promised, null, Cancel).Figures.Served);
    }
}
