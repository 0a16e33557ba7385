using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// All columns that a plan shorter than the bound plus a slack can use: those whose height exceeds the value of their
/// pieces by no more than the slack. Depth-first over the ways of laying pieces, cut off by the knapsack's best
/// completion.
/// </summary>
/// <remarks>
/// R. Baldacci, N. Christofides and A. Mingozzi, "An exact algorithm for the vehicle routing problem based on the set
/// partitioning formulation with additional cuts", Mathematical Programming 115 (2008), for the use of enumerated
/// columns in an exact method. Whole numbers throughout. Only maximal patterns: cutting more than is wanted costs
/// nothing.
/// </remarks>
internal sealed class ReducedCostEnumeration
{
    private const int StepsPerColumn = 1000;

    /// <summary>The clock is asked so seldom, as it takes longer than a node.</summary>
    private const int NodesBetweenLooks = 1 << 10;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly long scale;
    private readonly long[] values;
    private readonly long[] prices;
    private readonly long[][] best;
    private readonly int[] copies;
    private readonly int[] copiesOfPiece;
    private readonly Dictionary<Column, Found> found = [];
    private Int128 worth;
    private long target;
    private long lowest;
    private long least;
    private int height;
    private long price;
    private int most;
    private int waysUpToHeight;
    private int nodes;

    /// <param name="duals">Feasible: no strip is worth more than its height times <paramref name="scale"/>.</param>
    public ReducedCostEnumeration(StripGrid grid, ImmutableArray<long> duals, long scale, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        this.scale = scale;
        values = new long[grid.Ways.Length];
        prices = new long[grid.Heights.Length];
        copies = new int[grid.Ways.Length];
        copiesOfPiece = new int[grid.Pieces.Length];
        best = [.. Enumerable.Range(0, grid.Ways.Length + 1).Select(_ => new long[grid.Width + 1])];
        Value(duals, [.. grid.Heights.Select(_ => 0L)], grid.Worth(duals.AsSpan()));
    }

    /// <summary>Takes other duals, those of a case of plans.</summary>
    /// <param name="heightDuals">What a strip of each height is cheaper by.</param>
    /// <param name="worth">No plan of the case is shorter; in 1/scale units.</param>
    public void Value(ImmutableArray<long> duals, ImmutableArray<long> heightDuals, Int128 worth)
    {
        this.worth = worth;
        for (var h = 0; h < prices.Length; h++)
        {
            prices[h] = (grid.Heights[h] * scale) - heightDuals[h];
        }

        for (var way = 0; way < values.Length; way++)
        {
            values[way] = duals[grid.Ways[way].Piece];
        }

        FindBestCompletions();
    }

    /// <summary>
    /// The columns for plans up to a target, the highest one from <paramref name="from"/> to <paramref name="to"/> for
    /// which there are no more of them than asked; null where there are more for each, or the work is used up.
    /// </summary>
    /// <param name="from">In units of length, like <paramref name="to"/>.</param>
    public (IReadOnlyCollection<Column> Columns, long Target)? Columns(long from, long to, int mostColumns)
    {
        found.Clear();
        most = mostColumns;
        lowest = from;
        target = to;
        var way = 0;
        for (var h = 0; h < prices.Length; h++)
        {
            while (way < grid.Ways.Length && grid.Ways[way].Height <= grid.Heights[h])
            {
                way++;
            }

            height = grid.Heights[h];
            price = prices[h];
            waysUpToHeight = way;
            least = price - Slack;
            if (!Extend(way - 1, grid.Width, 0, reachesHeight: false))
            {
                return null;
            }
        }

        return (found.Keys, target);
    }

    /// <summary>What a strip may cost above the value of its pieces, in 1/scale units.</summary>
    private long Slack => (long)((Int128)target * scale - worth);

    /// <summary>best[i][x]: the greatest value of ways below i within width x.</summary>
    private void FindBestCompletions()
    {
        for (var i = 0; i < grid.Ways.Length; i++)
        {
            best[i].CopyTo(best[i + 1], 0);
            Admit(best[i + 1], grid.Ways[i].Width, values[i], grid.Counts[grid.Ways[i].Piece]);
            meter.Charge(grid.Width);
        }
    }

    private void Admit(long[] table, int width, long value, int count)
    {
        if (count >= grid.Width / width)
        {
            for (var x = width; x < table.Length; x++)
            {
                table[x] = Math.Max(table[x], table[x - width] + value);
            }

            return;
        }

        for (var bundle = 1; count > 0; bundle *= 2)
        {
            var these = Math.Min(bundle, count);
            for (var x = table.Length - 1; x >= width * these; x--)
            {
                table[x] = Math.Max(table[x], table[x - (width * these)] + (value * these));
            }

            count -= these;
        }
    }

    /// <summary>False where the limit of columns or work is hit.</summary>
    private bool Extend(int way, int room, long value, bool reachesHeight)
    {
        meter.Charge(WorkMeter.StepsPerNode);
        if ((++nodes & (NodesBetweenLooks - 1)) == 0 && meter.MustStop)
        {
            return false;
        }

        if (value + best[way + 1][room] < least || (!reachesHeight && (way < 0 || grid.Ways[way].Height < height)))
        {
            return true;
        }

        if (way < 0)
        {
            return Keep(room, price - value);
        }

        var (piece, width) = (grid.Ways[way].Piece, grid.Ways[way].Width);
        var fits = Math.Min(room / width, grid.Counts[piece] - copiesOfPiece[piece]);
        for (var times = fits; times >= 0; times--)
        {
            copies[way] = times;
            copiesOfPiece[piece] += times;
            var reaches = reachesHeight || (times > 0 && grid.Ways[way].Height == height);
            var goOn = Extend(way - 1, room - (times * width), value + (times * values[way]), reaches);
            copiesOfPiece[piece] -= times;
            copies[way] = 0;
            if (!goOn)
            {
                return false;
            }
        }

        return true;
    }

    private bool Keep(int room, long reducedCost)
    {
        for (var way = 0; way < waysUpToHeight; way++)
        {
            var piece = grid.Ways[way].Piece;
            if (grid.Ways[way].Width <= room && copiesOfPiece[piece] < grid.Counts[piece])
            {
                return true;
            }
        }

        meter.Charge(StepsPerColumn);
        var column = Column.Proper(grid, copies.AsSpan(0, waysUpToHeight), grid.Counts.AsSpan());
        // Of columns that yield the same, the one with the fewest pieces to trim.
        var trims = 0;
        foreach (var cell in column.Pattern.Cells)
        {
            trims += grid.Ways[cell.Way].Height < height ? cell.Times : 0;
        }

        if (!found.TryGetValue(column, out var same) || trims < same.Trims)
        {
            found.Remove(column);
            found.Add(column, new(trims, reducedCost));
        }

        return (found.Count <= most || LowerTarget()) && !meter.MustStop;
    }

    /// <summary>Lowers the target until a good part of the columns drops out; false where it would be too low.</summary>
    private bool LowerTarget()
    {
        long[] costs = [.. found.Values.Select(f => f.ReducedCost).Order()];
        target = (long)((worth + costs[costs.Length * 3 / 4] - 1) / scale);
        if (target < lowest)
        {
            return false;
        }

        var slack = Slack;
        foreach (var (column, f) in found)
        {
            if (f.ReducedCost > slack)
            {
                found.Remove(column);
            }
        }

        least = price - slack;
        return true;
    }

    private readonly record struct Found(int Trims, long ReducedCost);
}
