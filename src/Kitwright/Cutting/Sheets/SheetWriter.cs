using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting.Sheets;

/// <summary>
/// Writes chosen patterns as a plan: cost, figures, what is short and the status are computed here from the patterns,
/// never taken from a method. Surplus must have been removed.
/// </summary>
public static class SheetWriter
{
    /// <param name="bound">No plan that cuts everything costs less or, for the goal of fewest sheets, touches fewer.</param>
    /// <param name="enoughExcluded">Whether it is proved that not everything can be cut.</param>
    public static SheetPlan Write(
        SheetProblem problem,
        SheetGrid grid,
        IEnumerable<CutSheets> sheets,
        Rational bound,
        bool enoughExcluded,
        long scale,
        ImmutableArray<long> duals,
        string method,
        long work,
        string stoppedBy
    )
    {
        var chosen = sheets.ToList();
        var cuts = grid.IsOpen ? Open(problem, grid, chosen) : Closed(problem, grid, chosen);
        var given = new long[grid.Pieces.Length];
        foreach (var sheet in chosen)
        {
            foreach (var (piece, copies) in sheet.Pattern.Cells())
            {
                given[piece] += (long)sheet.Times * copies;
            }
        }

        var givenOf = grid.Pieces.Zip(given).ToDictionary(pair => pair.First.Demand, pair => pair.Second);
        var missing = problem
            .Demand.Select((demand, index) => new ShortPiece(demand.Piece, (int)Math.Max(0, demand.Count - givenOf.GetValueOrDefault(index))))
            .Where(shortage => shortage.Count > 0)
            .ToImmutableArray();
        var cost = grid.IsOpen
            ? problem.Sheets[0].Cost * (grid.Unit * (Rational)chosen.Sum(sheet => (long)sheet.Times * sheet.Pattern.Height)).InInches
            : chosen.Aggregate(Rational.Zero, (sum, sheet) => sum + (problem.Sheets[sheet.Pattern.Sheet].Cost * sheet.Times));
        var count = grid.IsOpen ? 1 : chosen.Sum(sheet => sheet.Times);
        var reached = problem.Goal == SheetGoal.FewestSheets ? count : cost;
        var whole = missing.IsEmpty;
        var proof = new SheetProof(
            whole && bound >= reached ? ProofStatus.Proved : ProofStatus.Within,
            whole ? Rational.Min(bound, reached) : null,
            enoughExcluded && !whole,
            grid.Unit,
            grid.CostUnit,
            scale,
            DualsOfDemand(problem, grid, duals),
            method,
            work,
            stoppedBy
        );
        var strips = cuts.SelectMany(cut => cut.Strips.Select(strip => (Strip: strip, Times: cut.Times * strip.Times))).ToList();
        var figures = new SheetFigures(
            count,
            strips.Sum(s => s.Times),
            strips.Sum(s => s.Times * s.Strip.SubCuts.Sum(cut => cut.Times)),
            given.Sum()
        );
        return new(problem, cuts, missing, cost, figures, proof);
    }

    /// <summary>All strips of a cloth of open length lie on the one cloth: the highest first.</summary>
    private static ImmutableArray<SheetCut> Open(SheetProblem problem, SheetGrid grid, List<CutSheets> chosen)
    {
        var id = new PathId("cut/1");
        var strips = chosen
            .SelectMany(sheet => sheet.Pattern.Strips.Select(strip => (sheet.Pattern, Strip: strip with { Times = strip.Times * sheet.Times })))
            .OrderByDescending(s => s.Strip.Height)
            .ThenByDescending(s => s.Strip.Times)
            .Select((s, index) => Write(problem, grid, id.Child("strip", index + 1), s.Strip, s.Pattern))
            .ToImmutableArray();
        return strips.IsEmpty ? [] : [new(id, problem.Sheets[0].Id, FirstCut.Across, 1, strips)];
    }

    private static ImmutableArray<SheetCut> Closed(SheetProblem problem, SheetGrid grid, List<CutSheets> chosen) =>
        [
            .. chosen
                .OrderBy(sheet => sheet.Pattern.Sheet)
                .ThenByDescending(sheet => sheet.Times)
                .ThenByDescending(sheet => sheet.Pattern.Height)
                .Select((sheet, index) =>
                {
                    var id = new PathId("cut").Child("sheet", index + 1);
                    return new SheetCut(
                        id,
                        problem.Sheets[sheet.Pattern.Sheet].Id,
                        sheet.Pattern.Along ? FirstCut.Along : FirstCut.Across,
                        sheet.Times,
                        [.. sheet.Pattern.Strips.Select((strip, n) => Write(problem, grid, id.Child("strip", n + 1), strip, sheet.Pattern))]
                    );
                }),
        ];

    private static SheetStrip Write(SheetProblem problem, SheetGrid grid, PathId id, PatternStrip strip, SheetPattern pattern) =>
        new(
            id,
            grid.Unit * (Rational)strip.Height,
            pattern.Layers,
            strip.Times,
            [
                .. strip.SubCuts.Select((cut, index) => new SubCut(
                    id.Child("cut", index + 1),
                    grid.Unit * (Rational)cut.Width,
                    cut.Times,
                    [.. cut.Stack.Select(cell => new StackedPiece(problem.Demand[grid.Pieces[cell.Piece].Demand].Piece, cell.Times, cell.Turned))]
                )),
            ]
        );

    private static ImmutableArray<long> DualsOfDemand(SheetProblem problem, SheetGrid grid, ImmutableArray<long> duals)
    {
        if (duals.IsEmpty)
        {
            return [];
        }

        var all = new long[problem.Demand.Length];
        for (var i = 0; i < duals.Length; i++)
        {
            all[grid.Pieces[i].Demand] = duals[i];
        }

        return [.. all];
    }
}
