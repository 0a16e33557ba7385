using System.Collections.Immutable;
using Kitwright.Checking.Kits;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Checking.Tests.Kits;

/// <summary>A kit plan that is right passes; one that is wrong in one place is found there.</summary>
public sealed class KitCheckerTest
{
    private static readonly Shelf Shelf = new(
        [Fabric("F"), Fabric("G")],
        [Bolt("b1", "F", "L1", 100), Bolt("b2", "F", "L2", 60), Bolt("b3", "G", "L9", 61)]
    );

    private static readonly KitRequest Request = new([
        new("Dawn", "M1", new([Need("A", NeedKind.Top, "F", 36), Need("A", NeedKind.Binding, "F", 18), Need("B", NeedKind.Top, "G", 30)], null), 3),
    ]);

    private static KitPlan Plan() =>
        KitPlanning.Plan(Shelf, Request, KitTerms.Usual, BestFitDecreasing.Solver, TestContext.Current.CancellationToken).Value!;

    [Fact]
    public void A_plan_as_made_passes() => Assert.Empty(KitChecker.Check(Shelf, Request, Plan()));

    public static TheoryData<string, string> Slips() =>
        new()
        {
            { "an inch too much", "check.kits.bolt-short" },
            { "a remnant that is not there", "check.kits.remnant" },
            { "no load loss", "check.kits.load-loss" },
            { "a bolt used twice", "check.kits.bolt-twice" },
            { "a foreign bolt", "check.kits.bolt-unknown" },
            { "another length on hand", "check.kits.on-hand" },
            { "a cut left out", "check.kits.missing" },
            { "a kit that nobody wants", "check.kits.stray" },
            { "a length that nobody wants", "check.kits.not-wanted" },
            { "lots mixed", "check.kits.lots" },
            { "one complete kit more", "check.kits.complete" },
            { "waste made small", "check.kits.figure" },
            { "a bound beyond the figure", "check.kits.bound" },
            { "one kit more carried", "check.kits.carries" },
            { "fewer kits at most than there are", "check.kits.at-most" },
            { "too small an order", "check.kits.order" },
            { "an order for something else", "check.kits.order-short" },
        };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_found(string slip, string rule)
    {
        var findings = KitChecker.Check(Shelf, Request, Spoil(Plan(), slip));
        Assert.Contains(findings, f => f.Rule == rule);
        Assert.All(findings, f => Assert.NotEmpty(Catalog.English.Say(f.Reason) + Catalog.English.Say(f.Remedy)));
    }

    private static KitPlan Spoil(KitPlan plan, string slip) =>
        slip switch
        {
            "an inch too much" => WithCut(plan, c => c with { Length = c.Length + Length.Inches(60) }),
            "a remnant that is not there" => WithLoad(plan, l => l with { Remnant = l.Remnant + Length.Inch }),
            "no load loss" => WithLoad(plan, l => l with { Loss = Length.Zero, Remnant = l.Remnant + l.Loss }),
            "a bolt used twice" => WithFabric(plan, f => f with { Loads = f.Loads.Add(f.Loads[0]) }),
            "a foreign bolt" => WithLoad(plan, l => l with { Bolt = "b9" }),
            "another length on hand" => WithLoad(plan, l => l with { OnHand = l.OnHand + Length.Inch, Remnant = l.Remnant + Length.Inch }),
            "a cut left out" => WithLoad(plan, l => l with { Cuts = l.Cuts.RemoveAt(0) }),
            "a kit that nobody wants" => WithCut(plan, c => c with { Kit = 9 }),
            "a length that nobody wants" => WithCut(plan, c => c with { Length = c.Length - Length.Inch }),
            "lots mixed" => WithLoad(plan, l => l with { Cuts = [l.Cuts[0] with { Kit = l.Cuts[0].Kit == 1 ? 2 : 1 }, .. l.Cuts[1..]] }),
            "one complete kit more" => plan with { Lines = [plan.Lines[0] with { Complete = plan.Lines[0].Complete + 1 }] },
            "waste made small" => WithFabric(plan, f => f with { Figures = f.Figures with { Waste = Length.Zero } }),
            "a bound beyond the figure" => WithFabric(plan, f => f with { Goals = f.Goals.SetItem(1, f.Goals[1] with { Bound = f.Goals[1].Value + 1 }) }),
            "one kit more carried" => plan with { Lines = [plan.Lines[0] with { Carries = plan.Lines[0].Carries + 1 }] },
            "fewer kits at most than there are" => plan with { CompleteAtMost = plan.Lines[0].Complete - 1 },
            "too small an order" => plan with { Order = [plan.Order[0] with { Bolts = 0, BoltsAtLeast = 0 }] },
            "an order for something else" => plan with { Order = [plan.Order[0] with { Short = Length.Inch }] },
            _ => throw new ArgumentOutOfRangeException(nameof(slip)),
        };

    private static KitPlan WithFabric(KitPlan plan, Func<FabricOutcome, FabricOutcome> spoil) =>
        plan with { Fabrics = plan.Fabrics.SetItem(0, spoil(plan.Fabrics[0])) };

    private static KitPlan WithLoad(KitPlan plan, Func<BoltLoad, BoltLoad> spoil) =>
        WithFabric(plan, f => f with { Loads = f.Loads.SetItem(0, spoil(f.Loads[0])) });

    private static KitPlan WithCut(KitPlan plan, Func<LoadCut, LoadCut> spoil) =>
        WithLoad(plan, l => l with { Cuts = l.Cuts.SetItem(0, spoil(l.Cuts[0])) });

    private static Fabric Fabric(string number) =>
        new(number, number + " name", Length.Inches(44), 1299, "#3a5f8c", new(PrintKind.Solid, "#3a5f8c", 1));

    private static Bolt Bolt(string id, string fabric, string lot, int inches) => new(id, fabric, lot, Length.Inches(inches));

    private static Need Need(string letter, NeedKind kind, string fabric, int inches) =>
        new(letter, kind, ImmutableArray.Create($"{letter}-{kind}"), fabric, Length.Inches(inches));
}
