using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Kits;

/// <summary>Shelves and needs written by hand; lengths in inches.</summary>
internal static class KitCases
{
    public static Fabric Fabric(string number, int? putUpYards = null) =>
        new(number, number + " name", Length.Inches(44), 1299, "#3a5f8c", new(PrintKind.Solid, "#3a5f8c", 1))
        {
            PutUp = putUpYards is { } yards ? Length.Yards(yards) : null,
        };

    public static Bolt Bolt(string id, string fabric, int inches, string lot = "L1") =>
        new(id, fabric, lot, Length.Inches(inches));

    public static Shelf ShelfOf(params ImmutableArray<Bolt> bolts) =>
        new([.. bolts.Select(b => b.Fabric).Distinct().Select(number => Fabric(number))], bolts);

    public static Need Need(string letter, string? fabric, int inches, NeedKind kind = NeedKind.Top, string? role = null) =>
        new(letter, kind, [role ?? $"{letter}-{kind}"], fabric, Length.Inches(inches));

    public static KitLine Line(string colorway, int kits, params ImmutableArray<Need> needs) =>
        new(colorway, null, new(needs, null), kits);

    public static KitPlan Plan(Shelf shelf, KitTerms terms, params ImmutableArray<KitLine> lines)
    {
        var made = KitPlanning.Plan(shelf, new(lines), terms, BestFitDecreasing.Solver);
        Assert.DoesNotContain(made.Findings, f => f.Weight == Weight.Fault);
        return made.Value!;
    }
}
