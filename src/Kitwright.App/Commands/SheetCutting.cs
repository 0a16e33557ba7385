using System.Collections.Immutable;
using System.Diagnostics;
using Kitwright.App.Planning;
using Kitwright.Cutting.Sheets;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.App.Commands;

/// <summary>A list of pieces cut from pieces of cloth, or from a roll in three stages or in layers; checked before it is shown.</summary>
internal static class SheetCutting
{
    public static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Cut(
        PieceList list,
        ImmutableArray<StockSheet> sheets,
        CutTerms terms,
        CancellationToken cancel
    )
    {
        var (demand, unknown) = DemandOf(list, sheets);
        var trims = terms.Width is null ? (terms.Trim, terms.Trim) : (terms.Trim, terms.Straightening);
        var problem = new SheetProblem(
            new(terms.Stages, terms.First, terms.Last, trims.Item1, trims.Item2, terms.Folds),
            sheets,
            demand,
            terms.Goal == "sheets" ? SheetGoal.FewestSheets : SheetGoal.Cost
        );
        var (cut, findings) = Timed(
            () => SheetRoom.Plan(problem, terms.Budget, terms.Seed, cancel),
            planned => (planned.Value, planned.Findings),
            terms
        );
        return (cut, [.. unknown, .. findings.Select(f => f with { Place = PlaceOf(f.Place, list) })]);
    }

    /// <summary>A plan with the time that it took, as it is written.</summary>
    /// <param name="terms">Of the list; null for cloths measured in inches.</param>
    public static (CutOutcome? Cut, ImmutableArray<Finding> Findings) Timed<T>(
        Func<T> make,
        Func<T, (SheetPlan? Plan, ImmutableArray<Finding> Findings)> read,
        CutTerms? terms = null
    )
    {
        var started = Stopwatch.GetTimestamp();
        var (plan, findings) = read(make());
        return (plan is null ? null : Outcome(plan, terms, Stopwatch.GetElapsedTime(started).TotalSeconds), findings);
    }

    /// <summary>A roll as the one cloth of open length, at one a unit of length.</summary>
    public static ImmutableArray<StockSheet> Roll(Length width) => [new(new("cloth/roll"), "roll", width, null, null, 1)];

    private static (ImmutableArray<SheetDemand>, List<Finding>) DemandOf(PieceList list, ImmutableArray<StockSheet> sheets)
    {
        var unknown = new List<Finding>();
        var demand = ImmutableArray.CreateBuilder<SheetDemand>();
        foreach (var piece in list.Pieces)
        {
            var from = piece.Cloths.ToLookup(name => sheets.Any(sheet => Same(sheet.Label, name)));
            if (from[false].FirstOrDefault() is { } name)
            {
                unknown.Add(Finding.Of("cutlist.cloth-unknown", $"line {piece.Line}", ("label", piece.Label), ("cloth", name)));
                continue;
            }

            demand.Add(
                new(
                    IdOf(piece),
                    piece.Label,
                    piece.Width,
                    piece.Height,
                    piece.Count,
                    piece.MayTurn,
                    [.. sheets.Where(sheet => piece.Cloths.Any(cloth => Same(sheet.Label, cloth))).Select(sheet => sheet.Id)]
                )
            );
        }

        return (demand.ToImmutable(), unknown);
    }

    private static bool Same(string x, string y) => x.Equals(y, StringComparison.OrdinalIgnoreCase);

    private static PathId IdOf(ListedPiece piece) => new PathId("piece").Child("line", piece.Line);

    private static string PlaceOf(string place, PieceList list) =>
        list.Pieces.FirstOrDefault(piece => IdOf(piece).Value == place) is { } found ? $"line {found.Line}" : place;

    private static CutOutcome Outcome(SheetPlan plan, CutTerms? terms, double seconds)
    {
        var isRoll = terms?.Width is not null;
        var straightening = terms?.Straightening ?? Length.Zero;
        Measured Of(Length length) => new(length, terms?.Measure.Unit);
        var length = straightening + Length.Inches(plan.Cost);
        var counted = plan.Problem.Goal == SheetGoal.FewestSheets;
        var tree = new CutTree(plan, terms?.Measure.Unit, terms is null ? Leftovers.UsualLeast : terms.Keep);
        return new(
            plan.Proof.Status == ProofStatus.Proved ? "proved" : "within",
            isRoll ? Of(length) : null,
            isRoll && plan.Proof.Bound is { } least ? Of(straightening + Length.Inches(least)) : null,
            isRoll && !terms!.Increments.IsEmpty ? Of(terms.Purchase(length)) : null,
            isRoll ? null : LengthText.Mixed(plan.Cost),
            isRoll || counted || plan.Proof.Bound is null ? null : LengthText.Mixed(plan.Proof.Bound.Value),
            plan.Figures.Sheets,
            counted && plan.Proof.Bound is { } fewest ? (int)fewest.Numerator : null,
            Math.Round(seconds, 3),
            plan.Proof.Method,
            plan.Proof.Work,
            plan.Proof.StoppedBy,
            [.. plan.Short.Select(s => new ShortOutcome(plan.Problem.Demand.First(d => d.Piece == s.Piece).Label, s.Count))],
            plan.Proof.EnoughExcluded,
            [.. plan.Cuts.Select(cut => tree.Of(cut, length))]
        );
    }
}
