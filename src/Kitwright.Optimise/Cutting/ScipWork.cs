namespace Kitwright.Optimise.Cutting;

/// <summary>
/// What SCIP does, in steps of work, and the settings under which it can be told from what SCIP counts: columns, rows,
/// nodes and iterations of the simplex method.
/// </summary>
/// <remarks>
/// Measured on programs of 40 to 9,000 columns and 12 to 49 rows. An iteration goes over all columns; strong branching
/// does iterations that are in no count, so that it is held to a number of them and charged in full.
/// </remarks>
internal static class ScipWork
{
    /// <summary>Iterations that strong branching may do beside half as many as the nodes have done.</summary>
    private const int StrongIterations = 2000;

    /// <summary>A node takes about so many iterations.</summary>
    private const int IterationsOfNode = 8;

    /// <summary>
    /// No cuts below the root, few there, no restarts, no analysis of conflicts, little strong branching and no heuristics
    /// that solve programs of their own: on these programs they take several times as long as the nodes they save, and
    /// their time is in no count of iterations.
    /// </summary>
    public static string Settings { get; } =
        $"""
        separating/maxrounds = 0
        separating/maxroundsroot = 5
        presolving/maxrestarts = 0
        conflict/enable = FALSE
        branching/relpscost/sbiterofs = {StrongIterations}
        heuristics/rens/freq = -1
        heuristics/rins/freq = -1
        heuristics/crossover/freq = -1
        heuristics/alns/freq = -1

        """;

    /// <summary>Reading and presolving.</summary>
    public static long OfRoot(int columns) => 3_000_000 + (60_000L * columns);

    /// <param name="iterations">As SCIP counts them, without those of strong branching.</param>
    public static long Steps(long nodes, long iterations, int rows, int columns)
    {
        // Each of a few fractional columns is tried up and down at the first nodes.
        var strong = Math.Min(StrongIterations + (iterations / 2), 8L * nodes * rows);
        return OfRoot(columns) + (nodes * 400_000) + ((iterations + strong) * OfIteration(columns));
    }

    /// <summary>The limit of nodes for what is left of the budget.</summary>
    public static long MostNodes(WorkMeter meter, int rows, int columns)
    {
        var left = meter.Left - Steps(1, 0, rows, columns);
        var strong = Math.Min(left / 2, StrongIterations * OfIteration(columns));
        return 1 + (Math.Max(0, left - strong) / (400_000 + (3 * IterationsOfNode / 2 * OfIteration(columns))));
    }

    private static long OfIteration(int columns) => 20_000 + (70L * columns);
}
