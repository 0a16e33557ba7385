using System.Collections.Immutable;
using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The shortest whole numbers of strips near a solution of the linear program, by Gomory's group relaxation: whatever is
/// cut besides the basic strips must leave a demand that these meet in whole numbers. The cheapest way to that is a
/// shortest path in a finite group; a search along all paths that are short enough sorts out those that would take a
/// negative number of basic strips, so that the answer is exact.
/// </summary>
/// <remarks>
/// R. E. Gomory, "Some polyhedra related to combinatorial problems", Linear Algebra and its Applications 2 (1969); the
/// search: L. A. Wolsey, "Extensions of the group theoretic approach in integer programming", Management Science 18(1),
/// 1971. For few kinds of pieces, whose groups are small, however many pieces there are. Costs and classes are whole
/// numbers; floating point proposes numbers of basic strips, which are then put to the test.
/// </remarks>
internal sealed class GroupRelaxation
{
    /// <summary>Larger groups take more memory and time than a search by another method.</summary>
    private const int LargestGroup = 1 << 19;

    private const int MostKinds = 16;
    private const int StepsPerNode = 60;

    /// <summary>Strips that cost nothing beside the basic ones could be taken without end.</summary>
    private const int LongestPath = 500;

    private const long Never = long.MaxValue / 2;

    private readonly StripGrid grid;
    private readonly WorkMeter meter;
    private readonly ImmutableArray<Column?> basis;
    private readonly ImmutableArray<int> surplusOf;
    private readonly FiniteGroup group;
    private readonly double[][] inverse;
    private readonly Besides[] besides;
    private readonly long[] least;
    private readonly Int128 worth;
    private readonly long scale;
    private readonly int[] times;
    private readonly double[] basic;
    private readonly double[][] mostGained;
    private readonly int stepsPerStep;
    private long slack;
    private long steps;
    private bool unsure;
    private ImmutableArray<CutStrips>? found;

    private GroupRelaxation(
        StripGrid grid,
        LinearSolution solution,
        FiniteGroup group,
        double[][] inverse,
        IReadOnlyCollection<Column> columns,
        WorkMeter meter
    )
    {
        this.grid = grid;
        this.meter = meter;
        this.group = group;
        this.inverse = inverse;
        (basis, surplusOf, scale) = (solution.Basis, solution.SurplusOf, solution.Scale);
        worth = solution.Worth(grid);
        besides = [.. Everything(solution, columns).OrderBy(b => b.Cost)];
        times = new int[besides.Length];
        basic = Solve(grid.Counts.AsSpan());
        least = new long[group.Order];
        mostGained = MostGained();
        stepsPerStep = 4 + (2 * group.Places);
    }

    /// <summary>The group of a basis; null where it is too large for this method, which is seen at once.</summary>
    public static FiniteGroup? GroupOf(LinearSolution solution) =>
        solution.Basis.Length > MostKinds ? null : FiniteGroup.Of(solution.Matrix(), LargestGroup);

    /// <summary>Null where numbers fail.</summary>
    /// <param name="columns">All that a plan up to the target can use, apart from the basic ones.</param>
    public static GroupRelaxation? Of(
        StripGrid grid,
        LinearSolution solution,
        FiniteGroup group,
        IReadOnlyCollection<Column> columns,
        WorkMeter meter
    ) => Inverse(solution.Matrix()) is { } inverse ? new(grid, solution, group, inverse, columns, meter) : null;

    /// <summary>
    /// The shortest strips up to a target, and how far it is certain that there are none shorter.
    /// </summary>
    /// <returns>The strips, or null where none were found; no plan is shorter than <c>Searched</c>.</returns>
    public (ImmutableArray<CutStrips>? Strips, long Searched) Search(long from, long target, SumsOfHeights sums)
    {
        FillTable();
        var wanted = group.ClassOf(grid.Counts.AsSpan());
        var searched = from;
        if (meter.MustStop || least[wanted] >= Never)
        {
            return (null, meter.MustStop ? from : sums.RoundUp(target + 1));
        }

        var lowest = (long)((worth + (Int128)least[wanted] + scale - 1) / scale);
        for (var length = sums.RoundUp(Math.Max(from, lowest)); length <= target; length = sums.RoundUp(length + 1))
        {
            searched = length;
            slack = (long)(((Int128)length * scale) - worth);
            if (!Follow(0, wanted, 0, 0))
            {
                return (found, searched);
            }

            if (unsure)
            {
                return (null, searched);
            }
        }

        return (null, sums.RoundUp(target + 1));
    }

    /// <summary>Goes along all paths from here that are short enough; false where one led to a plan, or work is used up.</summary>
    private bool Follow(int first, int left, long spent, int depth)
    {
        meter.Charge(StepsPerNode + steps);
        steps = 0;
        if (meter.MustStop || (left == 0 && Accept()))
        {
            return false;
        }

        if (!CanEndWell(first, slack - spent))
        {
            return true;
        }

        if (depth == LongestPath)
        {
            unsure = true;
            return true;
        }

        Span<int> places = stackalloc int[group.Places];
        group.Split(left, places);
        for (var i = first; i < besides.Length && spent + besides[i].Cost <= slack; i++)
        {
            ref readonly var next = ref besides[i];
            var then = group.Add(places, next.Opposite);
            steps += stepsPerStep;
            if (spent + next.Cost + least[then] > slack || times[i] >= next.Most)
            {
                continue;
            }

            times[i]++;
            Move(next.Direction, -1);
            var goOn = Follow(i, then, spent + next.Cost, depth + 1);
            Move(next.Direction, 1);
            times[i]--;
            if (!goOn)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether what may still be spent, on this kind of strip and later ones, can make up for every negative number.</summary>
    private bool CanEndWell(int first, long mayBeSpent)
    {
        var gained = mostGained[first];
        for (var row = 0; row < basic.Length; row++)
        {
            if (basic[row] < -0.5 && basic[row] + (gained[row] * mayBeSpent) < -0.5)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>From each kind of strip on, how many basic strips of each row can be gained for a unit of cost at most.</summary>
    private double[][] MostGained()
    {
        var gained = new double[besides.Length + 1][];
        gained[^1] = new double[basic.Length];
        for (var i = besides.Length - 1; i >= 0; i--)
        {
            gained[i] = [.. gained[i + 1]];
            for (var row = 0; row < basic.Length; row++)
            {
                // A strip that costs nothing gains as much as one likes; a little more than is right keeps rounding harmless.
                var gain = -besides[i].Direction[row];
                var perCost = gain <= 1e-9 ? 0 : besides[i].Cost == 0 ? double.PositiveInfinity : gain * 1.000001 / besides[i].Cost;
                gained[i][row] = Math.Max(gained[i][row], perCost);
            }
        }

        return gained;
    }

    private void Move(double[] direction, int sign)
    {
        for (var row = 0; row < basic.Length; row++)
        {
            basic[row] += sign * direction[row];
        }
    }

    /// <summary>True where the basic strips that complete the path are none of them negative: a plan.</summary>
    private bool Accept()
    {
        foreach (var value in basic)
        {
            if (value < -0.5)
            {
                return false;
            }
        }

        var strips = new List<CutStrips>();
        Span<int> rest = stackalloc int[grid.Pieces.Length];
        grid.Counts.CopyTo(rest);
        for (var i = 0; i < besides.Length; i++)
        {
            Cut(besides[i].Column, besides[i].Surplus, times[i], rest, strips);
        }

        for (var row = 0; row < basic.Length; row++)
        {
            Cut(basis[row], surplusOf[row], (int)Math.Round(basic[row]), rest, strips);
        }

        if (rest.ContainsAnyExcept(0))
        {
            // Rounding errors have grown too large to tell: nothing is proved from here on.
            unsure = true;
            return false;
        }

        found = Surplus.Remove(grid, strips);
        return true;
    }

    private static void Cut(Column? column, int surplus, int count, Span<int> rest, List<CutStrips> strips)
    {
        if (count == 0)
        {
            return;
        }

        if (column is null)
        {
            rest[surplus] += count;
            return;
        }

        strips.Add(new(column.Pattern, count));
        for (var k = 0; k < column.Pieces.Length; k++)
        {
            rest[column.Pieces[k]] -= count * column.Copies[k];
        }
    }

    /// <summary>
    /// The least cost to each class: one kind of strip after the other, from the cheapest on; what is reached more cheaply
    /// already needs no kind of its own. Adding it over and over goes round a circle of classes; twice round settles it.
    /// </summary>
    private void FillTable()
    {
        Array.Fill(least, Never);
        least[0] = 0;
        var seen = new bool[group.Order];
        foreach (var next in besides)
        {
            if (least[next.Class] <= next.Cost)
            {
                continue;
            }

            if (meter.MustStop)
            {
                return;
            }

            meter.Charge((group.IsCyclic ? 6L : 30L) * group.Order);
            Array.Clear(seen);
            for (var start = 0; start < group.Order; start++)
            {
                if (!seen[start])
                {
                    GoRound(start, next, seen);
                }
            }
        }
    }

    private void GoRound(int start, in Besides next, bool[] seen)
    {
        var reached = Never;
        for (var round = 0; round < 2; round++)
        {
            var at = start;
            do
            {
                seen[at] = true;
                reached = Math.Min(reached, least[at]);
                least[at] = reached;
                reached = Math.Min(Never, reached + next.Cost);
                at = group.Add(at, next.Class);
            } while (at != start);
        }
    }

    private IEnumerable<Besides> Everything(LinearSolution solution, IReadOnlyCollection<Column> columns)
    {
        var vector = new int[grid.Pieces.Length];
        foreach (var column in columns.Where(c => !basis.Contains(c)))
        {
            Array.Clear(vector);
            for (var k = 0; k < column.Pieces.Length; k++)
            {
                vector[column.Pieces[k]] = column.Copies[k];
            }

            yield return Beside(column, -1, solution.ReducedCost(column), column.EnoughTimes(grid.Counts.AsSpan()), vector);
        }

        for (var piece = 0; piece < vector.Length; piece++)
        {
            if (!surplusOf.Contains(piece))
            {
                Array.Clear(vector);
                vector[piece] = -1;
                yield return Beside(null, piece, solution.Duals[piece], int.MaxValue, vector);
            }
        }
    }

    private Besides Beside(Column? column, int surplus, long cost, int most, int[] vector)
    {
        var number = group.ClassOf(vector);
        var opposite = new int[group.Places];
        group.Split(group.Negative(number), opposite);
        return new(column, surplus, cost, most, number, opposite, Solve(vector));
    }

    /// <summary>The numbers of basic strips that yield a vector.</summary>
    private double[] Solve(ReadOnlySpan<int> vector)
    {
        var result = new double[vector.Length];
        for (var row = 0; row < result.Length; row++)
        {
            for (var i = 0; i < vector.Length; i++)
            {
                result[row] += inverse[row][i] * vector[i];
            }
        }

        return result;
    }

    private static double[][]? Inverse(int[][] matrix)
    {
        var program = new SparseColumns();
        for (var column = 0; column < matrix.Length; column++)
        {
            var rows = Enumerable.Range(0, matrix.Length).Where(row => matrix[row][column] != 0).ToArray();
            program.Add(rows, [.. rows.Select(row => (double)matrix[row][column])]);
        }

        var inverse = new BasisInverse(matrix.Length);
        return inverse.Compute(program, [.. Enumerable.Range(0, matrix.Length)])
            ? [.. Enumerable.Range(0, matrix.Length).Select(row => Enumerable.Range(0, matrix.Length).Select(i => inverse.Column(i)[row]).ToArray())]
            : null;
    }

    /// <summary>A strip that is not basic, or the surplus of a piece.</summary>
    /// <param name="Direction">How many of each basic strip it replaces.</param>
    private readonly record struct Besides(Column? Column, int Surplus, long Cost, int Most, int Class, int[] Opposite, double[] Direction);
}
