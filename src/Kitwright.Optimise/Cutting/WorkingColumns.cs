namespace Kitwright.Optimise.Cutting;

/// <summary>
/// The variables of the strip master: the surplus of each row, then the columns. Most columns are looked at for a while
/// and then forgotten until pricing finds them again; when too many are forgotten, they are given up.
/// </summary>
internal sealed class WorkingColumns(int rows)
{
    public const int Nonbasic = -1;

    // Beyond, what is no longer looked at is given up: memory stays within tens of megabytes.
    private const int MostKept = 40_000;

    private readonly Dictionary<Column, int> variableOf = [];
    private readonly List<Column?> columnOf = [];
    private readonly List<bool> isActive = [];
    private readonly List<bool> ruledOut = [];
    private readonly List<int> positionOf = [];
    private readonly List<double> cost = [];
    private double[] worths = [];
    private int[] order = [];

    public SparseColumns Program { get; private set; } = new();

    /// <summary>Variables that pricing looks at.</summary>
    public List<int> Active { get; } = [];

    public int Count => columnOf.Count;

    public Column? this[int variable] => columnOf[variable];

    public double Cost(int variable) => cost[variable];

    public bool IsRuledOut(int variable) => ruledOut[variable];

    /// <summary>The row of the basis in which a variable is, or <see cref="Nonbasic"/>.</summary>
    public int Position(int variable) => positionOf[variable];

    public void Place(int variable, int position) => positionOf[variable] = position;

    public void Add(Column? column, double price, ReadOnlySpan<int> at, ReadOnlySpan<double> coefficients)
    {
        Program.Add(at, coefficients);
        columnOf.Add(column);
        cost.Add(price);
        positionOf.Add(Nonbasic);
        ruledOut.Add(false);
        isActive.Add(true);
        Active.Add(columnOf.Count - 1);
    }

    /// <summary>False where the column is being looked at already.</summary>
    public bool Add(Column column)
    {
        if (variableOf.TryAdd(column, columnOf.Count))
        {
            Span<double> copies = stackalloc double[column.Copies.Length];
            for (var i = 0; i < copies.Length; i++)
            {
                copies[i] = column.Copies[i];
            }

            Add(column, column.Height, column.Pieces.AsSpan(), copies);
            return true;
        }

        var variable = variableOf[column];
        if (isActive[variable])
        {
            return false;
        }

        isActive[variable] = true;
        ruledOut[variable] = false;
        Active.Add(variable);
        return true;
    }

    /// <summary>
    /// Rules out the columns being looked at that yield more of a piece than these counts, and the forbidden ones;
    /// columns added later are allowed.
    /// </summary>
    public void Allow(ReadOnlySpan<int> counts, HashSet<Column> forbidden)
    {
        foreach (var variable in Active)
        {
            ruledOut[variable] =
                variable >= rows
                && (!Program.IsWithin(variable, counts) || (forbidden.Count > 0 && forbidden.Contains(columnOf[variable]!)));
        }
    }

    /// <summary>
    /// Looks no longer at the columns that are worst at the present duals; they come back when priced again. Surpluses,
    /// pieces alone and the basis stay.
    /// </summary>
    /// <returns>True where variables have new numbers: <paramref name="basis"/> has been changed to them.</returns>
    public bool Forget(double[] duals, int[] basis, int[] alone)
    {
        if (Active.Count <= 250 + (4 * rows))
        {
            return false;
        }

        if (order.Length < Active.Count)
        {
            (order, worths) = (new int[2 * Active.Count], new double[2 * Active.Count]);
        }

        for (var i = 0; i < Active.Count; i++)
        {
            var variable = Active[i];
            var stays = variable < 2 * rows || positionOf[variable] != Nonbasic;
            order[i] = variable;
            worths[i] = stays ? double.NegativeInfinity : cost[variable] - Program.Dot(variable, duals);
        }

        var count = Active.Count;
        Array.Sort(worths, order, 0, count);
        Active.Clear();
        for (var i = 0; i < count; i++)
        {
            var keep = i < 130 + (5 * rows / 2) || double.IsNegativeInfinity(worths[i]);
            isActive[order[i]] = keep;
            if (keep)
            {
                Active.Add(order[i]);
            }
        }

        return Count > MostKept && GiveUpTheForgotten(basis, alone);
    }

    private bool GiveUpTheForgotten(int[] basis, int[] alone)
    {
        var number = new int[Count];
        var program = new SparseColumns();
        var kept = 0;
        for (var variable = 0; variable < number.Length; variable++)
        {
            if (!isActive[variable])
            {
                continue;
            }

            number[variable] = kept;
            program.Add(Program.Rows(variable), Program.Entries(variable));
            columnOf[kept] = columnOf[variable];
            cost[kept] = cost[variable];
            positionOf[kept] = positionOf[variable];
            ruledOut[kept] = ruledOut[variable];
            isActive[kept] = true;
            kept++;
        }

        foreach (var list in new[] { ruledOut, isActive })
        {
            list.RemoveRange(kept, list.Count - kept);
        }

        columnOf.RemoveRange(kept, columnOf.Count - kept);
        cost.RemoveRange(kept, cost.Count - kept);
        positionOf.RemoveRange(kept, positionOf.Count - kept);
        Program = program;
        variableOf.Clear();
        Active.Clear();
        for (var variable = 0; variable < kept; variable++)
        {
            Active.Add(variable);
            if (columnOf[variable] is { } column)
            {
                variableOf.Add(column, variable);
            }
        }

        for (var row = 0; row < rows; row++)
        {
            basis[row] = number[basis[row]];
            alone[row] = number[alone[row]];
        }

        return true;
    }
}
