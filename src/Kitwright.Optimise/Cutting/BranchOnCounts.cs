using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// Best-first branch and bound on how many strips of each height there are: where the linear program takes 11.8 strips of
/// a height, plans with at most 11 and plans with at least 12 are looked at each for itself. Raises the bound far where
/// a few high strips cannot be filled; it can be stopped and gone on with.
/// </summary>
/// <remarks>
/// Strong branching: D. Applegate, R. Bixby, V. Chvátal and W. Cook, "Finding cuts in the TSP", 1995 (from memory). The
/// leaves keep their duals, so that the checker need not trust any of this.
/// </remarks>
internal sealed class BranchOnCounts : IDisposable
{
    /// <summary>Heights tried both ways before one is branched on.</summary>
    private const int Candidates = 4;

    private const double Fractional = 1e-4;

    /// <summary>Numbers in the leaves' duals: what a plan's file has to carry.</summary>
    private const int MostFigures = 20_000;

    /// <summary>Cells of the knapsacks of all leaves: the checker goes through up to 16 times as many, within its own limit.</summary>
    private const long MostCells = 60_000_000;

    private readonly StripGrid grid;
    private readonly CountedStrips program;
    private readonly SumsOfHeights sums;
    private readonly PriorityQueue<Node, Int128> open = new();
    private readonly long mostLeaves;
    private Node? root;
    private int leaves;
    private bool ended;

    public BranchOnCounts(StripGrid grid, SumsOfHeights sums, WorkMeter meter)
    {
        (this.grid, this.sums) = (grid, sums);
        program = new(grid, meter);
        mostLeaves = Math.Min(MostFigures / (grid.Pieces.Length + grid.Heights.Length), MostCells / Math.Max(1, StripKnapsack.CellsOf(grid)));
    }

    /// <summary>No plan is shorter; in units, 0 before anything is solved.</summary>
    public long Bound { get; private set; }

    /// <summary>The cases and their duals; null where there are none beyond the linear program's own.</summary>
    public StripBound? Proof => root?.Split is null ? null : new(Bound, program.Scale, []) { Cases = root.ToBound() };

    /// <summary>The cases that a plan no longer than this may fall under, those of the least bound first.</summary>
    public IEnumerable<CountedRelaxation> Cases(long length) =>
        open.UnorderedItems.Where(item => RoundedUp(item.Priority) <= length).OrderBy(item => item.Priority).Select(item => item.Element.Relaxation);

    /// <summary>Goes on until the bound is above a length, the work is used up, or branching no longer helps.</summary>
    /// <param name="aim">The greatest length that would still be better.</param>
    /// <param name="reached">Told of each relaxation that is branched on.</param>
    public void Run(Func<long> aim, Action<CountedRelaxation> reached, WorkMeter meter)
    {
        if (root is null && program.Solve(CountLimits.Of(grid)) is { } whole)
        {
            root = new(whole, whole.Worth(grid));
            Open(root);
            leaves = 1;
        }

        while (!ended && root is not null && Bound <= aim() && !meter.MustStop)
        {
            var node = open.Peek();
            reached(node.Relaxation);
            if (leaves >= mostLeaves || Best(node) is not { } split)
            {
                // Stopped within a trial the node stays open; without a height to branch on nothing can raise the bound.
                ended = !meter.MustStop;
                break;
            }

            open.Dequeue();
            node.Split = split;
            leaves++;
            Open(split.Fewer);
            Open(split.More);
        }
    }

    public void Dispose() => program.Dispose();

    private void Open(Node node)
    {
        open.Enqueue(node, node.Worth);
        Bound = RoundedUp(open.Peek().Worth);
    }

    private long RoundedUp(Int128 worth) => sums.RoundUp((long)((worth + program.Scale - 1) / program.Scale));

    /// <summary>Of the heights whose count is fractional the one that raises the bound of both sides most; null where none is, or the work ends.</summary>
    private Split? Best(Node node)
    {
        var counts = node.Relaxation.Counts;
        double Fraction(int h) => Math.Min(counts[h] - Math.Floor(counts[h]), Math.Ceiling(counts[h]) - counts[h]);
        (Split Split, double Gain)? best = null;
        foreach (var h in Enumerable.Range(0, counts.Length).Where(h => Fraction(h) > Fractional).OrderByDescending(h => Fraction(h) * grid.Heights[h]).Take(Candidates))
        {
            var atMost = (int)Math.Floor(counts[h]);
            var limits = node.Relaxation.Limits;
            if (program.Solve(limits.Fewer(h, atMost)) is not { } fewer || program.Solve(limits.More(h, atMost + 1)) is not { } more)
            {
                return null;
            }

            var split = new Split(h, atMost, Under(node, fewer), Under(node, more));
            var gain = Gain(node, split.Fewer) * Gain(node, split.More);
            if (best is not { Gain: var most } || gain > most)
            {
                best = (split, gain);
            }
        }

        return best?.Split;
    }

    /// <summary>What a node says holds below it too: the duals that say more are kept.</summary>
    private Node Under(Node node, CountedRelaxation below)
    {
        var worth = below.Worth(grid);
        var above = BranchedBound.WorthOf(grid, new(node.Relaxation.Duals, node.Relaxation.HeightDuals), [.. below.Limits.AtLeast], [.. below.Limits.AtMost]);
        return above <= worth
            ? new(below, worth)
            : new(below with { Duals = node.Relaxation.Duals, HeightDuals = node.Relaxation.HeightDuals }, above);
    }

    private double Gain(Node node, Node below) => Math.Max(1e-3, (double)(below.Worth - node.Worth) / program.Scale);

    private sealed record Split(int Height, int AtMost, Node Fewer, Node More);

    private sealed class Node(CountedRelaxation relaxation, Int128 worth)
    {
        public CountedRelaxation Relaxation => relaxation;
        public Int128 Worth => worth;

        /// <summary>Null for a leaf.</summary>
        public Split? Split { get; set; }

        public BranchedBound ToBound() =>
            Split is { } split
                ? new CountSplit(split.Height, split.AtMost, split.Fewer.ToBound(), split.More.ToBound())
                : new CountDuals(relaxation.Duals, relaxation.HeightDuals);
    }
}
