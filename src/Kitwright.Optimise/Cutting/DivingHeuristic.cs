using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Diving with column generation at every node and limited discrepancy search: cut the strips that the linear program
/// is surest of, solve for the rest, go on; then come back and forbid a first choice a few times.
/// </summary>
/// <remarks>
/// R. Sadykov, F. Vanderbeck, A. Pessoa, I. Tahiri and E. Uchoa, "Primal heuristics for branch and price: the assets
/// of diving methods", INFORMS Journal on Computing 31(2), 2019.
/// </remarks>
internal sealed class DivingHeuristic(ColumnGenerator generator, int pieces, WorkMeter meter)
{
    private readonly Stack<CutStrips> chosen = new();
    private readonly List<int[]> counts = [];
    private ImmutableArray<CutStrips>? found;
    private long cutoff;

    /// <summary>Strips that cut the wanted pieces in less than <paramref name="below"/>, or null where none were found.</summary>
    public ImmutableArray<CutStrips>? Search(ReadOnlySpan<int> wanted, long below, int discrepancies, int depth)
    {
        chosen.Clear();
        found = null;
        cutoff = below;
        Dive(wanted, 0, 0, discrepancies, depth);
        return found;
    }

    private void Dive(ReadOnlySpan<int> wanted, int level, long length, int discrepancies, int depth)
    {
        if (!wanted.ContainsAnyExcept(0))
        {
            if (length < cutoff)
            {
                cutoff = length;
                found = [.. chosen];
            }

            return;
        }

        List<Column>? forbade = null;
        while (generator.Solve(wanted, cutoff - length))
        {
            if (Surest(wanted) is not ({ } column, var times))
            {
                break;
            }

            var left = Counts(level);
            wanted.CopyTo(left);
            for (var i = 0; i < column.Pieces.Length; i++)
            {
                left[column.Pieces[i]] -= Math.Min(left[column.Pieces[i]], times * column.Copies[i]);
            }

            chosen.Push(new(column.Pattern, times));
            Dive(left, level + 1, length + ((long)times * column.Height), discrepancies - (forbade?.Count ?? 0), depth - 1);
            chosen.Pop();
            if ((forbade?.Count ?? 0) >= discrepancies || depth <= 0 || meter.MustStop)
            {
                break;
            }

            generator.Forbid(column);
            (forbade ??= []).Add(column);
        }

        foreach (var column in forbade ?? [])
        {
            generator.Permit(column);
        }
    }

    /// <summary>One buffer for each level of the dive, kept from one dive to the next.</summary>
    private int[] Counts(int level)
    {
        while (counts.Count <= level)
        {
            counts.Add(new int[pieces]);
        }

        return counts[level];
    }

    /// <summary>The column nearest to a whole number of strips, and that number; rounding down where there is a choice.</summary>
    private (Column? Column, int Times) Surest(ReadOnlySpan<int> wanted)
    {
        (Column? Column, int Times) best = (null, 0);
        var bestScore = double.NegativeInfinity;
        for (var row = 0; row < pieces; row++)
        {
            if (generator.Basic(row) is not ({ } column, > 1e-6 and var times))
            {
                continue;
            }

            var whole = (int)Math.Floor(times + 1e-6);
            var score = whole >= 1 ? 1 + (whole / (whole + 1.0)) - (times - whole) * 0.001 : times;
            if (score > bestScore)
            {
                bestScore = score;
                best = (column, Math.Max(1, whole));
            }
        }

        return best.Column is null ? best : (best.Column, Math.Min(best.Times, Math.Max(1, best.Column.MostTimes(wanted))));
    }
}
