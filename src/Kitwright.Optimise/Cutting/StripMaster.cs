using Kitwright.Cutting;

namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The linear program of the strips: least sum of heights such that every piece is cut at least as often as wanted.
/// A revised simplex method with an explicit inverse of the basis: primal where columns were added, dual where the
/// demand changed or columns were ruled out.
/// </summary>
/// <remarks>
/// G. B. Dantzig and W. Orchard-Hays, "The product form for the inverse in the simplex method", 1954; C. E. Lemke's
/// dual method, 1954. A dive solves thousands of these small programs, each a few pivots from the last one; a general
/// solver spends 20 times as long on reading the program again as on pivoting. Floating point never decides a plan or
/// a bound: duals are turned into whole numbers, and the bound is computed from those.
/// </remarks>
internal sealed class StripMaster
{
    private const double PivotTolerance = 1e-8;
    private const double ReducedCostTolerance = 1e-7;
    private const double FeasibilityTolerance = 1e-8;
    private const int Nonbasic = -1;

    private readonly int rows;
    private readonly WorkMeter meter;

    // Variables: 0 … rows-1 are the surplus of each row, then the columns.
    private readonly List<Column?> columnOf = [];
    private readonly List<double> cost = [];
    private readonly SparseColumns program = new();
    private readonly List<int> positionOf = [];
    private readonly List<bool> ruledOut = [];
    private readonly List<int> active = [];
    private readonly List<bool> isActive = [];
    private readonly Dictionary<Column, int> variableOf = [];
    private readonly int[] startOf;
    private readonly double[] demand;
    private readonly double[] perturbation;

    private readonly int[] basis;
    private readonly BasisInverse inverse;
    private readonly double[] values;
    private readonly double[] duals;
    private readonly double[] direction;
    private readonly double[] pivotRow;

    public StripMaster(StripGrid grid, WorkMeter meter)
    {
        this.meter = meter;
        rows = grid.Pieces.Length;
        startOf = new int[rows];
        demand = new double[rows];
        perturbation = new double[rows];
        basis = new int[rows];
        inverse = new(rows);
        values = new double[rows];
        duals = new double[rows];
        direction = new double[rows];
        pivotRow = new double[rows];
        // A little more than is wanted, differently for each piece, keeps the method from going in circles.
        var random = new Random(12345);
        for (var row = 0; row < rows; row++)
        {
            perturbation[row] = 1e-7 * (1 + random.NextDouble());
            AddVariable(null, 0, [row], [-1]);
        }

        for (var row = 0; row < rows; row++)
        {
            startOf[row] = columnOf.Count;
            Add(Column.Of(grid, StripPattern.Of(grid, [new(grid.WaysOf[row][0], 1)])));
        }

        Want(grid.Counts);
        StartAgain();
    }

    /// <summary>Columns in the order in which they were added, first one for each piece alone.</summary>
    public int Count => columnOf.Count - rows;

    public Column this[int column] => columnOf[rows + column]!;

    /// <summary>False where the column is being looked at already.</summary>
    public bool Add(Column column)
    {
        if (!variableOf.TryAdd(column, columnOf.Count))
        {
            return Activate(variableOf[column]);
        }

        AddVariable(column, column.Height, [.. column.Pieces], [.. column.Copies.Select(copies => (double)copies)]);
        return true;
    }

    public void Want(IReadOnlyList<int> counts)
    {
        for (var row = 0; row < rows; row++)
        {
            demand[row] = counts[row] == 0 ? 0 : counts[row] + perturbation[row];
        }

        ComputeValues();
    }

    /// <summary>Holds every column that is being looked at to a rule; columns added later are allowed.</summary>
    public void Allow(Predicate<Column> rule)
    {
        foreach (var variable in active)
        {
            ruledOut[variable] = columnOf[variable] is { } column && !rule(column);
        }
    }

    /// <summary>Solves over the columns that are allowed; false where numbers fail.</summary>
    public bool Solve()
    {
        Forget();
        if (SolveFromHere())
        {
            return true;
        }

        StartAgain();
        return SolveFromHere();
    }


    public double Length
    {
        get
        {
            var length = 0.0;
            for (var row = 0; row < rows; row++)
            {
                length += cost[basis[row]] * values[row];
            }

            return length;
        }
    }

    /// <summary>The variable that is basic in a row: a column, or null for a surplus; and its value.</summary>
    public (Column? Column, double Times) Basic(int row) => (columnOf[basis[row]], values[row]);

    public double Dual(int piece) => duals[piece];

    private void AddVariable(Column? column, double price, ReadOnlySpan<int> at, ReadOnlySpan<double> coefficients)
    {
        program.Add(at, coefficients);
        columnOf.Add(column);
        cost.Add(price);
        positionOf.Add(Nonbasic);
        ruledOut.Add(false);
        isActive.Add(false);
        Activate(columnOf.Count - 1);
    }

    private bool Activate(int variable)
    {
        if (isActive[variable])
        {
            return false;
        }

        isActive[variable] = true;
        ruledOut[variable] = false;
        active.Add(variable);
        return true;
    }

    /// <summary>Looks no longer at the columns that are worst at the present duals; they come back when priced again.</summary>
    private void Forget()
    {
        if (active.Count <= 400 + (6 * rows))
        {
            return;
        }

        var order = active
            .Select(variable => (variable, worth: variable < 2 * rows || positionOf[variable] != Nonbasic ? double.NegativeInfinity : ReducedCost(variable)))
            .OrderBy(x => x.worth)
            .ToList();
        active.Clear();
        for (var i = 0; i < order.Count; i++)
        {
            var keep = i < 200 + (3 * rows) || double.IsNegativeInfinity(order[i].worth);
            isActive[order[i].variable] = keep;
            if (keep)
            {
                active.Add(order[i].variable);
            }
        }
    }

    /// <summary>The basis of each piece cut alone; for pieces that are not wanted, of their surplus.</summary>
    private void StartAgain()
    {
        for (var row = 0; row < rows; row++)
        {
            positionOf[basis[row]] = Nonbasic;
        }

        for (var row = 0; row < rows; row++)
        {
            var alone = demand[row] > 0;
            basis[row] = alone ? startOf[row] : row;
            positionOf[basis[row]] = row;
            direction[row] = alone ? 1 : -1;
        }

        inverse.SetDiagonal(direction);
        ComputeValues();
        ComputeDuals();
    }

    private bool SolveFromHere()
    {
        for (var pivots = 0; pivots < 200 + (20 * rows); pivots++)
        {
            if (inverse.Age > 100 + (2 * rows) && !Refresh())
            {
                return false;
            }

            var leaving = MostInfeasible();
            if (leaving >= 0)
            {
                if (!DualPivot(leaving))
                {
                    return false;
                }

                continue;
            }

            var entering = MostNegativeReducedCost();
            if (entering < 0)
            {
                return true;
            }

            if (!PrimalPivot(entering))
            {
                return false;
            }
        }

        return false;
    }

    private int MostInfeasible()
    {
        var (worst, at) = (FeasibilityTolerance, -1);
        for (var row = 0; row < rows; row++)
        {
            var violation = ruledOut[basis[row]] ? Math.Abs(values[row]) : -values[row];
            if (violation > worst)
            {
                (worst, at) = (violation, row);
            }
        }

        return at;
    }

    private bool DualPivot(int leaving)
    {
        inverse.CopyRow(leaving, pivotRow);
        var sign = values[leaving] < 0 ? -1.0 : 1.0;
        var (leastRatio, bestPivot, entering) = (double.PositiveInfinity, 0.0, -1);
        foreach (var variable in active)
        {
            if (positionOf[variable] != Nonbasic || ruledOut[variable])
            {
                continue;
            }

            var pivot = sign * program.Dot(variable, pivotRow);
            if (pivot > PivotTolerance)
            {
                var ratio = Math.Max(0, ReducedCost(variable)) / pivot;
                if (ratio < leastRatio - 1e-12 || (ratio <= leastRatio + 1e-12 && pivot > bestPivot))
                {
                    (leastRatio, bestPivot, entering) = (ratio, pivot, variable);
                }
            }
        }

        meter.Charge(active.Count * 8L);
        if (entering < 0)
        {
            return false;
        }

        inverse.Times(program, entering, direction);
        Pivot(entering, leaving);
        return true;
    }

    private int MostNegativeReducedCost()
    {
        var (least, at) = (-ReducedCostTolerance, -1);
        foreach (var variable in active)
        {
            if (positionOf[variable] == Nonbasic && !ruledOut[variable])
            {
                var reduced = ReducedCost(variable);
                if (reduced < least)
                {
                    (least, at) = (reduced, variable);
                }
            }
        }

        meter.Charge(active.Count * 5L);
        return at;
    }

    private bool PrimalPivot(int entering)
    {
        inverse.Times(program, entering, direction);
        var (leastRatio, bestPivot, leaving) = (double.PositiveInfinity, 0.0, -1);
        for (var row = 0; row < rows; row++)
        {
            var pivot = direction[row];
            var ratio =
                pivot > PivotTolerance ? Math.Max(0, values[row]) / pivot
                : pivot < -PivotTolerance && ruledOut[basis[row]] ? 0
                : double.PositiveInfinity;
            if (ratio < leastRatio - 1e-12 || (ratio <= leastRatio + 1e-12 && Math.Abs(pivot) > bestPivot))
            {
                (leastRatio, bestPivot, leaving) = (ratio, Math.Abs(pivot), row);
            }
        }

        if (leaving < 0 || double.IsPositiveInfinity(leastRatio))
        {
            return false;
        }

        Pivot(entering, leaving);
        return true;
    }

    private void Pivot(int entering, int leaving)
    {
        var step = values[leaving] / direction[leaving];
        var price = ReducedCost(entering) / direction[leaving];
        BasisInverse.AddScaled(values, direction, -step);
        values[leaving] = step;
        inverse.CopyRow(leaving, pivotRow);
        BasisInverse.AddScaled(duals, pivotRow, price);
        inverse.Pivot(direction, leaving);
        positionOf[basis[leaving]] = Nonbasic;
        basis[leaving] = entering;
        positionOf[entering] = leaving;
        meter.Charge(((long)rows * rows / 2) + (4L * rows));
    }

    private double ReducedCost(int variable) => cost[variable] - program.Dot(variable, duals);

    private void ComputeValues()
    {
        inverse.Times(demand, values);
        meter.Charge((long)rows * rows);
    }

    private void ComputeDuals()
    {
        for (var piece = 0; piece < rows; piece++)
        {
            var column = inverse.Column(piece);
            var sum = 0.0;
            for (var row = 0; row < rows; row++)
            {
                sum += cost[basis[row]] * column[row];
            }

            duals[piece] = sum;
        }
    }

    private bool Refresh()
    {
        if (!inverse.Compute(program, basis))
        {
            return false;
        }

        meter.Charge(2L * rows * rows * rows);
        ComputeValues();
        ComputeDuals();
        return true;
    }
}
