using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Plans;

namespace Kitwright.App.Planning;

/// <summary>
/// A quilt from cloth that is there: its cut list, fabric by fabric, from as few pieces of cloth as may be. A cloth whose
/// name is a fabric's letter serves that fabric; the others serve any.
/// </summary>
public static class StashRoom
{
    /// <summary>Pieces of a few kinds of cloth are looked through in a fraction of this.</summary>
    public static WorkBudget Looking { get; } = new("stash", 200_000_000, TimeSpan.FromSeconds(5));

    /// <param name="oneClothEach">
    /// Whether all pieces of one fabric come from cloths of one name, and no two fabrics from the same; otherwise
    /// scraps may be mixed.
    /// </param>
    public static StashAnswer Plan(
        QuiltPlan quilt,
        ImmutableArray<StockSheet> cloths,
        Length trim,
        bool oneClothEach,
        WorkBudget budget,
        CancellationToken cancel
    )
    {
        return Plan(quilt, cloths, Choice(quilt, cloths), trim, oneClothEach, budget, cancel);
    }

    /// <summary>The cloths that each fabric may come from, by letter.</summary>
    public static ImmutableDictionary<string, ImmutableArray<StockSheet>> Choice(QuiltPlan quilt, ImmutableArray<StockSheet> cloths)
    {
        var letters = quilt.Cloths.Select(cloth => cloth.Letter).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return quilt.Cloths.ToImmutableDictionary(cloth => cloth.Letter, cloth => For(cloth.Letter, cloths, letters));
    }

    /// <param name="choice">The cloths that each fabric may come from, by letter.</param>
    public static StashAnswer Plan(
        QuiltPlan quilt,
        ImmutableArray<StockSheet> cloths,
        ImmutableDictionary<string, ImmutableArray<StockSheet>> choice,
        Length trim,
        bool oneClothEach,
        WorkBudget budget,
        CancellationToken cancel
    )
    {
        if (oneClothEach)
        {
            choice = OneEach(quilt, choice, trim, cancel);
        }

        var without = quilt.Cloths.Where(cloth => choice[cloth.Letter].IsEmpty);
        var demand = quilt.Cloths.Except(without).SelectMany(cloth => DemandOf(cloth, choice[cloth.Letter])).ToImmutableArray();
        var planned = SheetRoom.Plan(Problem(cloths, demand, trim), budget, seed: 0, cancel);
        return new(
            planned.Value,
            choice,
            [.. without.Select(cloth => Finding.Of("stash.no-cloth", cloth.Id.Value, ("letter", cloth.Letter))), .. planned.Findings]
        );
    }

    /// <summary>Cloths of its letter where there are any, otherwise those that are no other fabric's.</summary>
    private static ImmutableArray<StockSheet> For(string letter, ImmutableArray<StockSheet> cloths, HashSet<string> letters)
    {
        var own = cloths.Where(cloth => cloth.Label.Equals(letter, StringComparison.OrdinalIgnoreCase)).ToImmutableArray();
        return own.IsEmpty ? [.. cloths.Where(cloth => !letters.Contains(cloth.Label))] : own;
    }

    /// <summary>The largest fabric chooses first: the cloth that gives most of it, then the one of which fewest are touched.</summary>
    private static ImmutableDictionary<string, ImmutableArray<StockSheet>> OneEach(
        QuiltPlan quilt,
        ImmutableDictionary<string, ImmutableArray<StockSheet>> choice,
        Length trim,
        CancellationToken cancel
    )
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var cloth in quilt.Cloths.OrderByDescending(c => c.Demand.Aggregate(Rational.Zero, (sum, d) => sum + (d.Width.InInches * d.Height.InInches * d.Count))))
        {
            var best = choice[cloth.Letter]
                .Where(sheet => !taken.Contains(sheet.Label))
                .GroupBy(sheet => sheet.Label, StringComparer.OrdinalIgnoreCase)
                .Select(same => (Sheets: same.ToImmutableArray(), Plan: SheetRoom.Plan(Problem([.. same], [.. DemandOf(cloth, [.. same])], trim), Looking, 0, cancel)))
                .OrderBy(x => Missing(x.Plan, cloth))
                .ThenBy(x => x.Plan.Value?.Figures.Sheets ?? int.MaxValue)
                .Select(x => x.Sheets)
                .FirstOrDefault([]);
            choice = choice.SetItem(cloth.Letter, best);
            taken.UnionWith(best.Select(sheet => sheet.Label));
        }

        return choice;
    }

    private static long Missing(Checked<SheetPlan> planned, ClothPlan cloth) =>
        cloth.Demand.Sum(d => (long)d.Count)
        - (planned.Value is { } plan ? plan.Problem.Demand.Sum(d => (long)d.Count) - plan.Short.Sum(s => (long)s.Count) : 0);

    private static SheetProblem Problem(ImmutableArray<StockSheet> cloths, ImmutableArray<SheetDemand> demand, Length trim) =>
        new(SheetTerms.Usual with { TrimAcross = trim, TrimAlong = trim }, cloths, demand, SheetGoal.FewestSheets);

    private static IEnumerable<SheetDemand> DemandOf(ClothPlan cloth, ImmutableArray<StockSheet> from) =>
        cloth
            .Demand.GroupBy(d => d.Piece)
            .Select(same => same.First() with { Count = same.Sum(d => d.Count) })
            .Select(d => new SheetDemand(
                d.Piece,
                d.Label,
                d.Width,
                d.Height,
                d.Count,
                d.MayTurn,
                [.. from.Select(sheet => sheet.Id)]
            ));
}

/// <summary>Whether a quilt comes out of the cloth that is there, and how.</summary>
/// <param name="Plan">Null where nothing of it can be cut.</param>
/// <param name="From">The cloths that each fabric's pieces may come from, by letter.</param>
public sealed record StashAnswer(
    SheetPlan? Plan,
    ImmutableDictionary<string, ImmutableArray<StockSheet>> From,
    ImmutableArray<Finding> Findings
)
{
    /// <summary>Everything is cut.</summary>
    public bool IsEnough => Plan is { Short.IsEmpty: true } && Findings.All(f => f.Weight != Weight.Fault);
}
