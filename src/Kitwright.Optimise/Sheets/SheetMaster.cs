using Google.OrTools.LinearSolver;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// The linear program over the sheet patterns found so far: least cost such that every piece is cut as often as wanted
/// or its penalty is paid, and no sheet is used more often than it is there. Floating point decides nothing: duals
/// become whole numbers before anything is concluded from them.
/// </summary>
internal sealed class SheetMaster : IDisposable
{
    private readonly Solver solver = Solver.CreateSolver("GLOP");
    private readonly SheetGrid grid;
    private readonly WorkMeter meter;
    private readonly Constraint[] demand;
    private readonly Constraint?[] supply;
    private readonly Objective objective;
    private readonly List<SheetColumn> columns = [];
    private readonly List<Variable> variables = [];
    private readonly List<Variable> missing = [];
    private readonly HashSet<string> keys = new(StringComparer.Ordinal);
    private double[] times = [];

    public SheetMaster(SheetGrid grid, WorkMeter meter)
    {
        this.grid = grid;
        this.meter = meter;
        objective = solver.Objective();
        objective.SetMinimization();
        demand = [.. grid.Pieces.Select(piece => solver.MakeConstraint(piece.Count, double.PositiveInfinity))];
        supply = [.. grid.Sheets.Select(sheet => sheet.Count is { } count ? solver.MakeConstraint(double.NegativeInfinity, count) : null)];
        for (var i = 0; i < demand.Length; i++)
        {
            var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
            demand[i].SetCoefficient(variable, 1);
            objective.SetCoefficient(variable, grid.PenaltyOf(i));
            missing.Add(variable);
        }
    }

    public IReadOnlyList<SheetColumn> Columns => columns;

    /// <summary>False where the column is known.</summary>
    public bool Add(SheetColumn column)
    {
        if (column.Pieces.IsEmpty || !keys.Add(column.Key))
        {
            return false;
        }

        var variable = solver.MakeNumVar(0, double.PositiveInfinity, "");
        objective.SetCoefficient(variable, column.Cost);
        for (var i = 0; i < column.Pieces.Length; i++)
        {
            demand[column.Pieces[i]].SetCoefficient(variable, column.Copies[i]);
        }

        supply[column.Sheet]?.SetCoefficient(variable, 1);
        columns.Add(column);
        variables.Add(variable);
        return true;
    }

    /// <summary>False where numbers fail.</summary>
    public bool Solve(IReadOnlyList<int> wanted, IReadOnlyList<int> sheetsLeft)
    {
        for (var i = 0; i < demand.Length; i++)
        {
            demand[i].SetLb(wanted[i]);
        }

        for (var s = 0; s < supply.Length; s++)
        {
            supply[s]?.SetUb(sheetsLeft[s]);
        }

        var status = solver.Solve();
        meter.Charge(1000L * (demand.Length + 10) * (1 + (solver.Iterations() / 10)));
        if (status != Solver.ResultStatus.OPTIMAL)
        {
            return false;
        }

        // Kept, as the solver forgets its solution when a column is added.
        times = [.. variables.Select(variable => variable.SolutionValue())];
        return true;
    }

    public double Dual(int piece) => demand[piece].DualValue();

    /// <summary>What one more of a sheet would save; 0 where there are as many as one likes.</summary>
    public double DualOfSheet(int sheet) => -(supply[sheet]?.DualValue() ?? 0);

    /// <summary>How often the last solution cuts a column.</summary>
    public double Times(int column) => column < times.Length ? times[column] : 0;

    public void Dispose()
    {
        foreach (var variable in variables.Concat(missing))
        {
            variable.Dispose();
        }

        foreach (var row in demand.Concat(supply.OfType<Constraint>()))
        {
            row.Dispose();
        }

        objective.Dispose();
        solver.Dispose();
    }
}
