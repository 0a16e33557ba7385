using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// First fit decreasing height: pieces from high to low, each into the first strip with room, else into a new one.
/// It always answers, at once, and is what every better plan is held against.
/// </summary>
/// <remarks>
/// E. G. Coffman, M. R. Garey, D. S. Johnson and R. E. Tarjan, "Performance bounds for level-oriented two-dimensional
/// packing algorithms", SIAM Journal on Computing 9 (1980), with equal strips kept together, so that time depends on
/// the kinds of pieces and not on how many there are. A piece that may turn opens strips in one way and fills room in
/// either; several choices of that way are tried, and the handbook's plan is among the candidates.
/// </remarks>
public static class FirstFit
{
    /// <summary>Table cells spent on the bound; beyond, the area bound has to do.</summary>
    private const long CellsForBound = 1L << 26;

    public static Checked<ClothPlan> Plan(ClothProblem problem)
    {
        var intake = ClothIntake.Of(problem);
        if (intake.Grid is not { } grid)
        {
            return new(null, intake.Findings);
        }

        var bound = Bound(grid);
        var plan = TableOrder.Write(intake.Problem, grid, Strips(grid), bound, "first-fit-decreasing", work: 0, stoppedBy: "done");
        return new(plan, intake.Findings);
    }

    /// <summary>The shortest of the candidates.</summary>
    public static ImmutableArray<CutStrips> Strips(StripGrid grid)
    {
        var best = HandbookWay.Strips(grid);
        foreach (var opening in Openings(grid))
        {
            var strips = Fill(grid, opening);
            if (CutStrips.TotalHeight(strips) < CutStrips.TotalHeight(best))
            {
                best = strips;
            }
        }

        return best;
    }

    /// <summary>The better of two simple bounds: by area, and by what each piece would take alone.</summary>
    public static StripBound Bound(StripGrid grid)
    {
        var sums = new SumsOfHeights(grid.Heights);
        var byArea = StripBound.ByArea(grid, sums);
        if (grid.Pieces.IsEmpty || StripKnapsack.CellsOf(grid) > CellsForBound)
        {
            return byArea;
        }

        var knapsack = new StripKnapsack(grid);
        var scale = StripKnapsack.ScaleFor(grid);
        ImmutableArray<long> shares = [.. grid.Pieces.Select(p => (long)((Int128)scale * p.Width * p.Height / grid.Width))];
        ImmutableArray<long> alone = [.. grid.Pieces.Select((_, piece) => PriceAlone(grid, piece, scale))];
        var bounds = new[] { shares, alone }
            .Select(duals => FarleyBound.Feasible(grid, knapsack, duals, scale))
            .Select(duals => FarleyBound.Of(grid, knapsack, sums, duals, scale));
        return bounds.Aggregate(byArea, StripBound.Greater);
    }

    private static long PriceAlone(StripGrid grid, int piece, long scale)
    {
        var count = grid.Pieces[piece].Count;
        return grid
            .WaysOf[piece]
            .Select(way => grid.Ways[way])
            .Min(way => scale * way.Height / Math.Min(count, grid.Width / way.Width));
    }

    /// <summary>For each piece the way in which it opens new strips: thrifty alone, lying low, standing narrow.</summary>
    private static IEnumerable<ImmutableArray<int>> Openings(StripGrid grid)
    {
        ImmutableArray<int> By(Func<int, int> way) => [.. Enumerable.Range(0, grid.Pieces.Length).Select(way)];
        yield return By(piece => HandbookWay.BestWay(grid, piece));
        yield return By(piece => grid.WaysOf[piece].MinBy(way => grid.Ways[way].Height));
        yield return By(piece => grid.WaysOf[piece].MinBy(way => grid.Ways[way].Width));
    }

    private static ImmutableArray<CutStrips> Fill(StripGrid grid, ImmutableArray<int> opening)
    {
        var strips = new List<OpenStrips>();
        var order = Enumerable
            .Range(0, grid.Pieces.Length)
            .OrderByDescending(piece => grid.Ways[opening[piece]].Height)
            .ThenByDescending(piece => grid.Ways[opening[piece]].Width)
            .ThenBy(piece => piece);
        foreach (var piece in order)
        {
            var left = grid.Pieces[piece].Count;
            ImmutableArray<int> narrowFirst = [.. grid.WaysOf[piece].OrderBy(way => grid.Ways[way].Width)];
            for (var s = 0; s < strips.Count && left > 0; s++)
            {
                var (height, room) = (strips[s].Height, strips[s].Room);
                foreach (var way in narrowFirst)
                {
                    if (grid.Ways[way].Width <= room && grid.Ways[way].Height <= height)
                    {
                        left = FillStrips(grid, strips, s, way, left);
                        break;
                    }
                }
            }

            if (left > 0)
            {
                var way = grid.Ways[opening[piece]];
                var inEach = grid.Width / way.Width;
                strips.Add(new(way.Height, grid.Width, (left + inEach - 1) / inEach, []));
                FillStrips(grid, strips, strips.Count - 1, opening[piece], left);
            }
        }

        return [.. strips.Select(s => new CutStrips(StripPattern.Of(grid, s.Cells), s.Times))];
    }

    /// <summary>Puts pieces into equal strips; where they are not needed in all, the strips part. Returns what is left.</summary>
    private static int FillStrips(StripGrid grid, List<OpenStrips> strips, int at, int way, int left)
    {
        var strip = strips[at];
        var fits = strip.Room / grid.Ways[way].Width;
        if (fits == 0)
        {
            return left;
        }

        var full = Math.Min(strip.Times, left / fits);
        var rest = full < strip.Times ? left - (full * fits) : 0;
        var parts = new List<OpenStrips>();
        Part(full, fits);
        Part(rest > 0 ? 1 : 0, rest);
        Part(strip.Times - full - (rest > 0 ? 1 : 0), 0);
        strips.RemoveAt(at);
        strips.InsertRange(at, parts);
        return left - (full * fits) - rest;

        void Part(int times, int copies)
        {
            if (times > 0)
            {
                var room = strip.Room - (copies * grid.Ways[way].Width);
                parts.Add(new(strip.Height, room, times, copies == 0 ? strip.Cells : strip.Cells.Add(new(way, copies))));
            }
        }
    }

    private sealed record OpenStrips(int Height, int Room, int Times, ImmutableArray<PatternCell> Cells);
}
