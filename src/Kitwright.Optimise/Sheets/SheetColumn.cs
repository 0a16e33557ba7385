using System.Collections.Immutable;
using System.Text;
using Kitwright.Cutting.Sheets;

namespace Kitwright.Optimise.Sheets;

/// <summary>One way to cut a sheet, as a column of the master program: its cost and what it yields.</summary>
/// <param name="Pieces">Indices of the pieces it yields, each once, ascending.</param>
/// <param name="Copies">How many of each; never more than are wanted.</param>
internal sealed record SheetColumn(SheetPattern Pattern, long Cost, ImmutableArray<int> Pieces, ImmutableArray<int> Copies)
{
    public static SheetColumn Of(SheetGrid grid, SheetPattern pattern)
    {
        var yields = pattern.Yields(grid.Pieces.Length);
        var pieces = Enumerable.Range(0, yields.Length).Where(i => yields[i] > 0).ToImmutableArray();
        return new(pattern, grid.CostOf(pattern), pieces, [.. pieces.Select(i => Math.Min(yields[i], grid.Counts[i]))]);
    }

    public int Sheet => Pattern.Sheet;

    /// <summary>How often it can be cut before it yields more than is wanted.</summary>
    public int MostTimes(IReadOnlyList<int> wanted)
    {
        var most = int.MaxValue;
        for (var i = 0; i < Pieces.Length; i++)
        {
            most = Math.Min(most, wanted[Pieces[i]] / Copies[i]);
        }

        return most;
    }

    /// <summary>Columns of equal keys cost the same and yield the same, however the pieces lie.</summary>
    public string Key
    {
        get
        {
            var key = new StringBuilder().Append(Sheet).Append('/').Append(Cost);
            for (var i = 0; i < Pieces.Length; i++)
            {
                key.Append(' ').Append(Pieces[i]).Append(':').Append(Copies[i]);
            }

            return key.ToString();
        }
    }
}
