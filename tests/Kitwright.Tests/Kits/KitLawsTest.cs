using CsCheck;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Tests.Kits.KitCases;

namespace Kitwright.Tests.Kits;

/// <summary>Laws of the kit plan where every fabric gives one length a kit, so that the counts are exact.</summary>
public sealed class KitLawsTest
{
    private static readonly Gen<Shelf> Shelves =
        Gen.Select(Gen.Int[0, 1], Gen.Int[0, 600]).Array[1, 6]
            .Select(bolts => ShelfOf([.. bolts.Select((b, i) => Bolt($"b{i}", $"F{b.Item1}", b.Item2))]));

    private static readonly Gen<KitLine> Lines =
        Gen.Select(Gen.Int[1, 90], Gen.Int[1, 90]).Select((a, b) => Line("Dawn", 0, Need("A", "F0", a), Need("B", "F1", b)));

    private static int Carries(Shelf shelf, KitLine line, KitTerms terms) => Plan(shelf, terms, line).Lines[0].Carries;

    [Fact]
    public void More_stock_never_carries_fewer_kits() =>
        Gen.Select(Shelves, Lines, Gen.Int[0, 600]).Sample((shelf, line, more) =>
            Carries(shelf with { Bolts = shelf.Bolts.Add(Bolt("more", "F0", more)) }, line, KitTerms.Usual)
                >= Carries(shelf, line, KitTerms.Usual));

    [Fact]
    public void A_longer_bolt_never_carries_fewer_kits() =>
        Gen.Select(Shelves, Lines).Sample((shelf, line) =>
            Carries(shelf with { Bolts = [.. shelf.Bolts.Select(b => b with { OnHand = b.OnHand + Length.Inch })] }, line, KitTerms.Usual)
                >= Carries(shelf, line, KitTerms.Usual));

    [Fact]
    public void A_bigger_load_loss_never_carries_more_kits() =>
        Gen.Select(Shelves, Lines, Gen.Int[0, 5]).Sample((shelf, line, more) =>
            Carries(shelf, line, KitTerms.Usual with { LoadLoss = Length.Inches(1 + more) }) <= Carries(shelf, line, KitTerms.Usual));

    [Fact]
    public void The_order_of_bolts_changes_nothing() =>
        Gen.Select(Shelves, Lines, Gen.Int[0, 9]).Sample((shelf, line, kits) =>
        {
            var turned = shelf with { Bolts = [.. shelf.Bolts.Reverse()] };
            var wanted = line with { Kits = kits };
            Assert.Equal(
                System.Text.Json.JsonSerializer.Serialize(Plan(shelf, KitTerms.Usual, wanted), PlanJson.Options),
                System.Text.Json.JsonSerializer.Serialize(Plan(turned, KitTerms.Usual, wanted), PlanJson.Options)
            );
        });

    [Fact]
    public void As_many_kits_as_are_carried_can_be_asked_for_and_come_out_whole() =>
        Gen.Select(Shelves, Lines).Sample((shelf, line) =>
        {
            var carries = Carries(shelf, line, KitTerms.Usual);
            var plan = Plan(shelf, KitTerms.Usual, line with { Kits = carries });
            Assert.Equal(carries, plan.Lines[0].Complete);
            Assert.Empty(plan.Order);
            Assert.NotEmpty(Plan(shelf, KitTerms.Usual, line with { Kits = carries + 1 }).Order);
        });

    [Fact]
    public void What_is_ordered_makes_the_wanted_kits_whole() =>
        Gen.Select(Shelves, Lines, Gen.Int[1, 40]).Sample((shelf, line, kits) =>
        {
            var wanted = line with { Kits = kits };
            var bought = Plan(shelf, KitTerms.Usual, wanted).Order
                .SelectMany(o => NewBolts.Of(o.Fabric, o.PutUp, o.Bolts).Select(b => b with { Id = o.Fabric + b.Id }));
            var plan = Plan(shelf with { Bolts = [.. shelf.Bolts, .. bought] }, KitTerms.Usual, wanted);
            Assert.Equal(kits, plan.Lines[0].Complete);
        });
}
