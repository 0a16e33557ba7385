using System.Collections.Immutable;
using Kitwright.Cutting;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Optimise.Sheets;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Optimise.Tests.Sheets;

/// <summary>Pieces and leftovers together are the cloth, and leftovers can be cut again.</summary>
public sealed class LeftoversTest
{
    private static readonly WorkBudget Little = new("test", 50_000_000, TimeSpan.FromSeconds(60));

    [Fact]
    public void Of_a_roll_nothing_is_lost()
    {
        var random = new Random(5);
        for (var i = 0; i < 20; i++)
        {
            ImmutableArray<ClothDemand> demand =
            [
                .. Enumerable.Range(0, 3).Select(n => new ClothDemand(new($"piece/{n}"), $"P{n}", Length.Inches(1 + random.Next(9)), Length.Inches(1 + random.Next(9)), 1 + random.Next(20), true)),
            ];
            var plan = Cut(new ClothProblem(new("cloth/A"), "A", [], null, ClothTerms.Usual, demand, 0, CutGoal.ByTheStep));

            var left = Leftovers.Of(plan, Length.Zero);

            // What squaring takes is not kept.
            var cloth = plan.Terms.UsableWidth.InInches * (plan.Purchase - plan.Terms.Straightening).InInches;
            Assert.Equal(cloth, Area(left) + demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width.InInches * d.Height.InInches * d.Count)));
            // Shelved, no piece is larger than it was, and three quilts leave three times as many.
            var shelved = Shelving.Of(plan with { Fabric = "F" }, Length.Ticks(1), 3).Aggregate(Rational.Zero, (sum, o) => sum + (o.Width.InInches * o.Height.InInches * o.Count));
            Assert.True(shelved <= Area(left) * 3 && shelved > Area(left) * 3 * new Rational(9, 10));
            Assert.Empty(Shelving.Of(plan, Length.Ticks(1), 3));
            Assert.All(Leftovers.Of(plan, Leftovers.UsualLeast), l => Assert.True(l.Width >= Leftovers.UsualLeast && l.Height >= Leftovers.UsualLeast));
        }
    }

    [Theory]
    [InlineData(FirstCut.Across)]
    [InlineData(FirstCut.Along)]
    public void Of_sheets_nothing_is_lost_and_what_is_left_can_be_cut(FirstCut first)
    {
        var sheet = new StockSheet(new("cloth/1"), "quarter", Length.Inches(22), Length.Inches(18), null, 1);
        var demand = new SheetDemand(new("piece/A"), "A", Length.Inches(4), Length.Inches(7), 13, false, []);
        var problem = new SheetProblem(SheetTerms.Usual with { Stages = 2, First = first }, [sheet], [demand], SheetGoal.Cost);
        var plan = Cut(problem);

        var left = plan.Cuts.SelectMany(cut => Leftovers.Of(plan, cut, Length.Zero)).ToImmutableArray();
        Assert.Equal((Rational)(plan.Figures.Sheets * 22 * 18), Area(left) + (13 * 28));

        // Each leftover is a sheet of its size: a piece as large is cut from it.
        Assert.All(
            left,
            l =>
            {
                var stock = new StockSheet(new("cloth/left"), "left", l.Width, l.Height, l.Count, 1);
                var again = new SheetDemand(new("piece/A"), "A", l.Width, l.Height, l.Count, false, []);
                Assert.Empty(Cut(new SheetProblem(SheetTerms.Usual, [stock], [again], SheetGoal.FewestSheets)).Short);
            }
        );
    }

    private static ClothPlan Cut(ClothProblem problem) => ClothCutter.Cut(problem, Little).Value!;

    private static SheetPlan Cut(SheetProblem problem) => SheetCutter.Cut(problem, Little).Value!;

    private static Rational Area(IEnumerable<Leftover> leftovers) =>
        leftovers.Aggregate(Rational.Zero, (sum, left) => sum + (left.Width.InInches * left.Height.InInches * left.Count));
}
