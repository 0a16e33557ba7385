using System.Collections.Immutable;

namespace Kitwright.Cutting;

/// <summary>Takes out what is cut beyond the demand, so that a plan cuts exactly what was asked for.</summary>
public static class Surplus
{
    /// <summary>
    /// The same strips without surplus: pieces that need a trim go first, then those in low strips. A strip may become
    /// lower or vanish; none becomes higher.
    /// </summary>
    public static ImmutableArray<CutStrips> Remove(StripGrid grid, IEnumerable<CutStrips> strips)
    {
        var kept = strips.Where(s => s.Times > 0).ToList();
        for (var piece = 0; piece < grid.Pieces.Length; piece++)
        {
            var surplus = kept.Sum(s => (long)s.Times * CopiesOf(grid, s.Pattern, piece)) - grid.Pieces[piece].Count;
            while (surplus > 0)
            {
                surplus -= RemoveSome(grid, kept, piece, surplus);
            }
        }

        return [.. kept.Where(s => s.Pattern.Height > 0)];
    }

    public static long CopiesOf(StripGrid grid, StripPattern pattern, int piece)
    {
        var copies = 0L;
        foreach (var cell in pattern.Cells)
        {
            copies += grid.Ways[cell.Way].Piece == piece ? cell.Times : 0;
        }

        return copies;
    }

    private static long RemoveSome(StripGrid grid, List<CutStrips> strips, int piece, long surplus)
    {
        var (strip, cell) = Enumerable
            .Range(0, strips.Count)
            .SelectMany(s => strips[s].Pattern.Cells.Select(c => (Strip: s, Cell: c)))
            .Where(x => grid.Ways[x.Cell.Way].Piece == piece)
            .OrderBy(x => grid.Ways[x.Cell.Way].Height == strips[x.Strip].Pattern.Height)
            .ThenBy(x => strips[x.Strip].Pattern.Height)
            .ThenBy(x => strips[x.Strip].Times)
            .First();
        var (pattern, times) = strips[strip];
        var fromEach = (int)Math.Min(cell.Times, surplus);
        var touched = (int)Math.Min(times, surplus / fromEach);
        strips[strip] = new(Without(grid, pattern, cell, fromEach), touched);
        if (times > touched)
        {
            strips.Add(new(pattern, times - touched));
        }

        return (long)touched * fromEach;
    }

    private static StripPattern Without(StripGrid grid, StripPattern pattern, PatternCell cell, int copies) =>
        StripPattern.Of(grid, pattern.Cells.Replace(cell, cell with { Times = cell.Times - copies }));
}
