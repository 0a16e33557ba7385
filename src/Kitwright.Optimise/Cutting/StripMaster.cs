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
    private const int Nonbasic = WorkingColumns.Nonbasic;

    private readonly int rows;
    private readonly WorkMeter meter;

    private readonly WorkingColumns columns;
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
        columns = new(rows);
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
            columns.Add(null, 0, [row], [-1]);
        }

        for (var row = 0; row < rows; row++)
        {
            startOf[row] = columns.Count;
            columns.Add(Column.Of(grid, StripPattern.Of(grid, [new(grid.WaysOf[row][0], 1)])));
        }

        Want(grid.Counts.AsSpan());
        StartAgain();
    }

    /// <summary>The columns kept, first one for each piece alone.</summary>
    public int Count => columns.Count - rows;

    public Column this[int column] => columns[rows + column]!;

    /// <summary>False where the column is being looked at already.</summary>
    public bool Add(Column column) => columns.Add(column);

    /// <inheritdoc cref="WorkingColumns.Allow"/>
    public void Allow(ReadOnlySpan<int> counts, HashSet<Column> forbidden) => columns.Allow(counts, forbidden);

    public void Want(ReadOnlySpan<int> counts)
    {
        for (var row = 0; row < rows; row++)
        {
            demand[row] = counts[row] == 0 ? 0 : counts[row] + perturbation[row];
        }

        ComputeValues();
    }

    /// <summary>Solves over the columns that are allowed; false where numbers fail.</summary>
    public bool Solve()
    {
        columns.Forget(duals, basis, startOf);
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
                length += columns.Cost(basis[row]) * values[row];
            }

            return length;
        }
    }

    /// <summary>The variable that is basic in a row: a column, or null for a surplus; and its value.</summary>
    public (Column? Column, double Times) Basic(int row) => (columns[basis[row]], values[row]);

    /// <summary>The piece whose surplus is basic in a row, or -1.</summary>
    public int SurplusIn(int row) => basis[row] < rows ? basis[row] : -1;

    public double Dual(int piece) => duals[piece];

    /// <summary>The basis of each piece cut alone; for pieces that are not wanted, of their surplus.</summary>
    private void StartAgain()
    {
        for (var row = 0; row < rows; row++)
        {
            columns.Place(basis[row], Nonbasic);
        }

        for (var row = 0; row < rows; row++)
        {
            var alone = demand[row] > 0;
            basis[row] = alone ? startOf[row] : row;
            columns.Place(basis[row], row);
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
            var violation = columns.IsRuledOut(basis[row]) ? Math.Abs(values[row]) : -values[row];
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
        foreach (var variable in columns.Active)
        {
            if (columns.Position(variable) != Nonbasic || columns.IsRuledOut(variable))
            {
                continue;
            }

            var pivot = sign * columns.Program.Dot(variable, pivotRow);
            if (pivot > PivotTolerance)
            {
                var ratio = Math.Max(0, ReducedCost(variable)) / pivot;
                if (ratio < leastRatio - 1e-12 || (ratio <= leastRatio + 1e-12 && pivot > bestPivot))
                {
                    (leastRatio, bestPivot, entering) = (ratio, pivot, variable);
                }
            }
        }

        meter.Charge(columns.Active.Count * 6L);
        if (entering < 0)
        {
            return false;
        }

        inverse.Times(columns.Program, entering, direction);
        Pivot(entering, leaving);
        return true;
    }

    private int MostNegativeReducedCost()
    {
        var (least, at) = (-ReducedCostTolerance, -1);
        foreach (var variable in columns.Active)
        {
            if (columns.Position(variable) == Nonbasic && !columns.IsRuledOut(variable))
            {
                var reduced = ReducedCost(variable);
                if (reduced < least)
                {
                    (least, at) = (reduced, variable);
                }
            }
        }

        meter.Charge(columns.Active.Count * 4L);
        return at;
    }

    private bool PrimalPivot(int entering)
    {
        inverse.Times(columns.Program, entering, direction);
        var (leastRatio, bestPivot, leaving) = (double.PositiveInfinity, 0.0, -1);
        for (var row = 0; row < rows; row++)
        {
            var pivot = direction[row];
            var ratio =
                pivot > PivotTolerance ? Math.Max(0, values[row]) / pivot
                : pivot < -PivotTolerance && columns.IsRuledOut(basis[row]) ? 0
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
        var before = inverse.Touched;
        inverse.Pivot(direction, leaving);
        columns.Place(basis[leaving], Nonbasic);
        basis[leaving] = entering;
        columns.Place(entering, leaving);
        meter.Charge(((inverse.Touched - before) * 2 / 5) + (25L * rows));
    }

    private double ReducedCost(int variable) => columns.Cost(variable) - columns.Program.Dot(variable, duals);

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
                sum += columns.Cost(basis[row]) * column[row];
            }

            duals[piece] = sum;
        }
    }

    private bool Refresh()
    {
        var before = inverse.Touched;
        if (!inverse.Compute(columns.Program, basis))
        {
            return false;
        }

        // Memory is taken and given back, too.
        meter.Charge((2 * (inverse.Touched - before)) + (500L * rows));
        ComputeValues();
        ComputeDuals();
        return true;
    }
}
