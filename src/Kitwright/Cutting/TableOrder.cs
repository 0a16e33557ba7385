using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// Writes chosen strips as a plan that a person cuts: the highest strips first, all strips of one ruler setting
/// together, in each strip the pieces of full height first. No earlier strip is needed again.
/// </summary>
/// <remarks>
/// Length, purchase, figures and status are computed here from the strips, never taken from a method. Surplus must
/// have been removed.
/// </remarks>
public static class TableOrder
{
    /// <param name="searched">In units: no plan is shorter, by the word of an exhausted search; 0 where none was.</param>
    public static ClothPlan Write(
        ClothProblem problem,
        StripGrid grid,
        IEnumerable<CutStrips> strips,
        StripBound bound,
        string method,
        long work,
        string stoppedBy,
        long searched = 0
    )
    {
        var ordered = strips
            .GroupBy(s => s.Pattern)
            .Select(same => new CutStrips(same.Key, same.Sum(s => s.Times)))
            .OrderByDescending(s => s.Pattern.Height)
            .ThenByDescending(s => s.Times)
            .ThenBy(s => string.Join(' ', s.Pattern.Cells.Select(c => $"{c.Way:D5}x{c.Times:D5}")), StringComparer.Ordinal)
            .ToList();
        var cuts = new DemandShares(problem, grid)
            .Share(ordered)
            .Select((strip, index) => Write(problem.Id.Child("strip", index + 1), strip))
            .ToImmutableArray();
        var height = CutStrips.TotalHeight(ordered);
        var heights = Units(grid, height);
        var margin = grid.Margin(problem.SpareStrips);
        var best = Math.Max(bound.Length, searched);
        var proof = new Proof(
            bound.Length >= height ? ProofStatus.Proved : best >= height ? ProofStatus.ProvedBySearch : ProofStatus.Within,
            Units(grid, Math.Min(best, height)),
            grid.Unit,
            bound.Scale,
            DualsOfDemand(problem, grid, bound.Duals),
            method,
            work,
            stoppedBy,
            Searched: bound.Length < height && best > bound.Length
        )
        {
            Cases = bound.Cases is { } cases ? [.. CasesOf(problem, grid, cases)] : null,
        };
        var cut = problem.Terms.Straightening + heights + problem.Terms.SquaringAgain(ordered.Sum(s => (long)s.Times));
        return new(
            problem.Id,
            problem.Letter,
            problem.Roles,
            problem.Fabric,
            problem.Terms,
            problem.Demand,
            cuts,
            cut,
            margin,
            problem.Terms.Purchase(cut + margin),
            proof,
            FiguresOf(problem, cuts)
        );
    }

    private static Length Units(StripGrid grid, long count) => grid.Unit * (Rational)count;

    private static IEnumerable<ProofCase> CasesOf(ClothProblem problem, StripGrid grid, BranchedBound cases) =>
        cases switch
        {
            CountSplit split =>
            [
                new() { Split = new(Units(grid, grid.Heights[split.Height]), split.AtMost) },
                .. CasesOf(problem, grid, split.Fewer),
                .. CasesOf(problem, grid, split.More),
            ],
            CountDuals leaf => [new() { Leaf = new(DualsOfDemand(problem, grid, leaf.Duals), leaf.HeightDuals) }],
            _ => [],
        };

    private static ImmutableArray<long> DualsOfDemand(ClothProblem problem, StripGrid grid, ImmutableArray<long> ofPieces)
    {
        if (ofPieces.IsEmpty)
        {
            return [];
        }

        var duals = new long[problem.Demand.Length];
        for (var piece = 0; piece < grid.Pieces.Length; piece++)
        {
            foreach (var demand in grid.Pieces[piece].Demands)
            {
                duals[demand] = ofPieces[piece];
            }
        }

        return [.. duals];
    }

    private static StripCut Write(PathId id, SharedStrip strip) =>
        new(
            id,
            strip.Height,
            strip.Times,
            [
                .. strip
                    .Cells.OrderByDescending(c => c.Height)
                    .ThenByDescending(c => c.Width)
                    .ThenBy(c => c.Demand.Label, StringComparer.Ordinal)
                    .Select((c, index) => new SubCut(
                        id.Child("cut", index + 1),
                        c.Width,
                        c.Times,
                        [new(c.Demand.Piece, 1, Turned: c.Width != c.Demand.Width)]
                    )),
            ]
        );

    private static ClothFigures FiguresOf(ClothProblem problem, ImmutableArray<StripCut> strips)
    {
        var demand = problem.Demand.GroupBy(d => d.Piece).ToDictionary(d => d.Key, d => d.First());
        Length HeightOf(StackedPiece piece) => piece.Turned ? demand[piece.Piece].Width : demand[piece.Piece].Height;
        var pieces = strips.Sum(strip => strip.Times * strip.SubCuts.Sum(sub => sub.Times));
        return new(
            strips.Select(strip => strip.Height).Distinct().Count(),
            strips.Sum(strip => strip.Times),
            pieces,
            strips.Sum(strip =>
                strip.Times * strip.SubCuts.Where(sub => HeightOf(sub.Stack[0]) < strip.Height).Sum(sub => sub.Times)
            ),
            pieces - problem.Demand.Sum(d => d.Count)
        )
        {
            Passes = BladePasses.Of(problem.Terms, strips, [], HeightOf),
        };
    }
}
