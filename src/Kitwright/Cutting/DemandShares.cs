using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Cutting;

/// <summary>
/// Gives the cut pieces of one size to the demands that share it, one demand after the other in the order of cutting,
/// so that a stack is finished before the next begins.
/// </summary>
internal sealed class DemandShares(ClothProblem problem, StripGrid grid)
{
    private readonly Queue<Stack>[] open =
    [
        .. grid.Pieces.Select(piece => new Queue<Stack>(piece.Demands.Select(d => new Stack(d, problem.Demand[d].Count)))),
    ];

    public IEnumerable<SharedStrip> Share(IEnumerable<CutStrips> strips)
    {
        foreach (var (pattern, times) in strips)
        {
            for (var left = times; left > 0; )
            {
                var run = Math.Min(left, LongestRun(pattern));
                yield return new(
                    grid.Unit * (Rational)pattern.Height,
                    Math.Max(run, 1),
                    [.. pattern.Cells.SelectMany(cell => Take(grid.Ways[cell.Way], cell.Times, Math.Max(run, 1)))]
                );
                left -= Math.Max(run, 1);
            }
        }
    }

    /// <summary>How many such strips the demands now being filled take whole; 0 where one strip serves several.</summary>
    private int LongestRun(StripPattern pattern) =>
        pattern
            .Cells.GroupBy(cell => grid.Ways[cell.Way].Piece)
            .Min(cells => open[cells.Key].Peek().Left / cells.Sum(cell => cell.Times));

    private IEnumerable<SharedCell> Take(Way way, int copies, int strips)
    {
        while (copies > 0)
        {
            var stack = open[way.Piece].Peek();
            var these = Math.Min(copies, stack.Left / strips);
            stack.Left -= these * strips;
            copies -= these;
            if (stack.Left == 0)
            {
                open[way.Piece].Dequeue();
            }

            yield return new(
                grid.Unit * (Rational)way.Width,
                grid.Unit * (Rational)way.Height,
                problem.Demand[stack.Demand],
                these
            );
        }
    }

    private sealed class Stack(int demand, int left)
    {
        public int Demand => demand;
        public int Left { get; set; } = left;
    }
}

internal sealed record SharedStrip(Length Height, int Times, ImmutableArray<SharedCell> Cells);

internal readonly record struct SharedCell(Length Width, Length Height, ClothDemand Demand, int Times);
