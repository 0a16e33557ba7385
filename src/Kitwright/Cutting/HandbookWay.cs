using System.Collections.Immutable;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// The handbook's way, which patterns print: each size of piece on strips of its own, the better way round. A plan is
/// held against it to show what it saves.
/// </summary>
/// <remarks>Strips for n pieces are n / ⌊strip / width⌋ rounded up: ../shared/checks, rule "Strips for N".</remarks>
public static class HandbookWay
{
    public static Findings.Checked<ClothPlan> Plan(ClothProblem problem)
    {
        var intake = ClothIntake.Of(problem);
        if (intake.Grid is not { } grid)
        {
            return new(null, intake.Findings);
        }

        var bound = StripBound.ByArea(grid, new(grid.Heights));
        var plan = TableOrder.Write(intake.Problem, grid, Strips(grid), bound, "handbook", work: 0, stoppedBy: "done");
        return new(plan, intake.Findings);
    }

    public static ImmutableArray<CutStrips> Strips(StripGrid grid) =>
        [.. Enumerable.Range(0, grid.Pieces.Length).SelectMany(piece => StripsOf(grid, piece))];

    /// <summary>The way of a piece that takes least cloth alone; of equal ones the lower.</summary>
    public static int BestWay(StripGrid grid, int piece) =>
        grid.WaysOf[piece].MinBy(way => (long)StripsFor(grid, way) * grid.Ways[way].Height);

    private static int StripsFor(StripGrid grid, int way)
    {
        var inEach = grid.Width / grid.Ways[way].Width;
        return (grid.Pieces[grid.Ways[way].Piece].Count + inEach - 1) / inEach;
    }

    private static IEnumerable<CutStrips> StripsOf(StripGrid grid, int piece)
    {
        var way = BestWay(grid, piece);
        var count = grid.Pieces[piece].Count;
        var inEach = Math.Min(count, grid.Width / grid.Ways[way].Width);
        yield return new(StripPattern.Of(grid, [new(way, inEach)]), count / inEach);
        if (count % inEach > 0)
        {
            yield return new(StripPattern.Of(grid, [new(way, count % inEach)]), 1);
        }
    }
}
