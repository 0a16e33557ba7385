using System.Text.Json;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;
using static Kitwright.Tests.Kits.KitCases;

namespace Kitwright.Tests.Kits;

public sealed class KitPlanningTest
{
    private static readonly KitTerms Terms = KitTerms.Usual;

    // floor((bolt − load loss) / length): 1 yd on a bolt of 5 yd gives 4 kits, not 5, since squaring takes an inch.
    [Theory]
    [InlineData(180, 36, 4)]
    [InlineData(181, 36, 5)]
    [InlineData(36, 36, 0)]
    [InlineData(0, 36, 0)]
    public void One_length_comes_so_often_out_of_a_bolt(int bolt, int length, int kits)
    {
        var plan = Plan(ShelfOf(Bolt("b", "F", bolt)), Terms, Line("Dawn", 0, Need("A", "F", length)));
        Assert.Equal((kits, kits), (plan.Lines[0].Carries, plan.Lines[0].CarriesAtMost));
    }

    [Fact]
    public void A_length_is_never_pieced_from_two_bolts()
    {
        var plan = Plan(ShelfOf(Bolt("b", "F", 30), Bolt("c", "F", 30)), Terms, Line("Dawn", 1, Need("A", "F", 40)));
        Assert.Equal(0, plan.Lines[0].Carries);
        Assert.Equal(0, plan.Lines[0].Complete);
        Assert.Equal(Length.Inches(40), plan.Fabrics[0].ShortLength);
    }

    [Fact]
    public void The_fabric_that_runs_out_first_limits_and_one_more_bolt_of_it_brings_kits()
    {
        // F carries 14, G 5; a new bolt of G of 15 yd gives floor(539 / 36) = 14 more, and then F limits.
        var shelf = ShelfOf(Bolt("b", "F", 505), Bolt("c", "G", 181));
        var line = Plan(shelf, Terms, Line("Dawn", 0, Need("A", "F", 36), Need("B", "G", 36))).Lines[0];
        Assert.Equal([14, 5], line.Fabrics.Select(f => f.Kits));
        Assert.Equal("G", Assert.Single(line.Limit.Fabrics).Fabric);
        Assert.Equal(9, line.Limit.Brings);
        Assert.Equal("The bolts carry 5 kits of Dawn.", Catalog.English.Say(KitWords.Carries(line)));
        Assert.Equal("G name runs out first; one more bolt of 15 yd would bring 9 kits more.", Catalog.English.Say(KitWords.Limit(line)));
    }

    [Fact]
    public void Fabrics_that_run_out_together_are_all_named()
    {
        var shelf = ShelfOf(Bolt("b", "F", 181), Bolt("c", "G", 181));
        var line = Plan(shelf, Terms, Line("Dawn", 0, Need("A", "F", 36), Need("B", "G", 36))).Lines[0];
        Assert.Equal(["F", "G"], line.Limit.Fabrics.Select(f => f.Fabric));
        Assert.Equal(14, line.Limit.Brings);
        Assert.Contains("of each", Catalog.English.Say(KitWords.Limit(line)));
    }

    [Fact]
    public void Where_cloth_is_short_it_goes_to_whole_kits()
    {
        // F gives two of either line, G one of Dawn and one of Dusk: fabric by fabric, two of Dusk (shorter) would be
        // cut from F and one kit of the three that G could serve would come out whole.
        var shelf = ShelfOf(Bolt("b", "F", 61), Bolt("c", "G", 37), Bolt("d", "H", 21));
        var plan = Plan(shelf, Terms, Line("Dawn", 2, Need("A", "F", 30), Need("B", "G", 36)), Line("Dusk", 2, Need("A", "F", 25), Need("B", "H", 20)));
        Assert.Equal([1, 1], plan.Lines.Select(l => l.Complete));
        Assert.Equal(2, plan.CompleteAtMost);
        Assert.Equal("2 of 4 kits come out whole.", Catalog.English.Say(KitWords.Filled(plan)));
    }

    [Fact]
    public void Each_kit_gets_each_length_once_and_bolts_are_squared_once()
    {
        var shelf = ShelfOf(Bolt("b", "F", 100), Bolt("c", "F", 60, "L2"));
        var fabric = Plan(shelf, Terms, Line("Dawn", 3, Need("A", "F", 36)), Line("Dusk", 1, Need("A", "F", 40))).Fabrics[0];
        Assert.Equal(4, fabric.Loads.SelectMany(l => l.Cuts).Select(c => c.Id).Distinct().Count() + fabric.Short.Sum(s => s.Kits));
        foreach (var load in fabric.Loads)
        {
            var cut = load.Cuts.Aggregate(Length.Zero, (sum, c) => sum + c.Length);
            Assert.Equal(load.OnHand, cut + load.Loss + load.Remnant);
            Assert.True(load.Remnant.Sign >= 0);
        }
    }

    [Fact]
    public void Top_and_binding_of_one_fabric_come_from_one_lot_and_a_backing_need_not()
    {
        var shelf = ShelfOf(Bolt("b", "F", 40, "L1"), Bolt("c", "F", 40, "L2"));
        var seen = Line("Dawn", 0, Need("A", "F", 36), Need("A", "F", 18, NeedKind.Binding));
        var behind = Line("Dawn", 0, Need("A", "F", 36), Need("A", "F", 18, NeedKind.Backing));
        Assert.Equal(0, Plan(shelf, Terms, seen).Lines[0].Carries);
        Assert.Equal(1, Plan(shelf, Terms, behind).Lines[0].Carries);
    }

    [Fact]
    public void Lengths_of_one_role_come_from_one_lot()
    {
        var shelf = ShelfOf(Bolt("b", "F", 40, "L1"), Bolt("c", "F", 40, "L2"));
        var line = Line("Dawn", 0, Need("A", "F", 36, role: "sky"), Need("A", "F", 18, NeedKind.Backing, role: "sky"));
        Assert.Equal(0, Plan(shelf, Terms, line).Lines[0].Carries);
    }

    [Fact]
    public void What_is_short_is_ordered_in_whole_bolts()
    {
        // Five lengths of 60 in are short; a put-up of 5 yd gives floor(179 / 60) = 2 of them.
        var shelf = new Shelf([Fabric("F", putUpYards: 5)], [Bolt("b", "F", 61)]);
        var order = Assert.Single(Plan(shelf, Terms, Line("Dawn", 6, Need("A", "F", 60))).Order);
        Assert.Equal((3, 3), (order.Bolts, order.BoltsAtLeast));
        Assert.Equal(Length.Yards(15), order.Length);
        Assert.Equal(Length.Inches(300), order.Short);
        Assert.Equal(Length.Inches((3 * 179) - 300), order.LeftOver);
        Assert.Equal(
            "Order 3 bolts of 5 yd of F name as one lot, 15 yd together: 8 1/3 yd are short and 237 in will be left.",
            Catalog.English.Say(KitWords.Order(order))
        );
    }

    [Fact]
    public void A_length_beyond_any_new_bolt_is_said_and_not_ordered()
    {
        var shelf = new Shelf([Fabric("F", putUpYards: 1)], []);
        var made = KitPlanning.Plan(shelf, new([Line("Dawn", 1, Need("A", "F", 40))]), Terms, BestFitDecreasing.Solver, Cancel);
        Assert.Empty(made.Value!.Order);
        Assert.Equal("kits.longer-than-bolt", Assert.Single(made.Findings).Rule);
    }

    [Fact]
    public void A_fabric_that_the_shelf_does_not_know_is_noted_and_ordered()
    {
        var made = KitPlanning.Plan(Shelf.Empty, new([Line("Dawn", 2, Need("A", "F", 36))]), Terms, BestFitDecreasing.Solver, Cancel);
        Assert.Equal("kits.unknown-fabric", Assert.Single(made.Findings).Rule);
        Assert.Equal(1, Assert.Single(made.Value!.Order).Bolts);
    }

    [Fact]
    public void A_request_at_fault_is_found()
    {
        string[] Rules(params KitLine[] lines) =>
            [.. KitPlanning.Plan(Shelf.Empty, new([.. lines]), Terms, BestFitDecreasing.Solver, Cancel).Findings.Where(f => f.Weight == Weight.Fault).Select(f => f.Rule)];

        Assert.Equal(["kits.no-colorway"], Rules());
        Assert.Equal(["kits.no-needs"], Rules(Line("Dawn", 1)));
        Assert.Equal(["kits.no-fabric"], Rules(Line("Dawn", 1, Need("A", null, 36))));
        Assert.Equal(["kits.need-not-above-zero"], Rules(Line("Dawn", 1, Need("A", "F", 0))));
        Assert.Equal(["kits.count"], Rules(Line("Dawn", -1, Need("A", "F", 36))));
        Assert.Equal(["kits.colorway-twice"], Rules(Line("Dawn", 1, Need("A", "F", 36)), Line("dawn", 1, Need("A", "F", 36))));
    }

    [Fact]
    public void The_plan_survives_its_JSON()
    {
        var plan = Plan(ShelfOf(Bolt("b", "F", 100)), Terms, Line("Dawn", 3, Need("A", "F", 36)));
        var text = JsonSerializer.Serialize(plan, PlanJson.Options);
        Assert.Equal(text, JsonSerializer.Serialize(JsonSerializer.Deserialize<KitPlan>(text, PlanJson.Options), PlanJson.Options));
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
