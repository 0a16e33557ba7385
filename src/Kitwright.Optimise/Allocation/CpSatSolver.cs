using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using Kitwright.Kits;

namespace Kitwright.Optimise.Allocation;

/// <summary>Constraint programming as a solver of bolt problems.</summary>
internal sealed class CpSatSolver(BoltBudget budget) : IBoltSolver
{
    // Counting comes many times in a plan, once for each colorway and fabric, and is the easier question.
    private const double CountShare = 0.1;

    public BoltAllocation Allocate(BoltProblem problem, BoltAllocation? start, CancellationToken cancel) =>
        CpSatBolts.Solve(problem, problem.Aim == AllocationAim.Count ? budget with { Work = budget.Work * CountShare } : budget, start, cancel);

    /// <summary>
    /// The most whole kits: one model over all short fabrics, in which each serves the same number of kits of a line.
    /// Starts from what best fit fills, and keeps that where it finds nothing better.
    /// </summary>
    public KitFilling Fill(ImmutableArray<BoltProblem> fabrics, CancellationToken cancel)
    {
        var start = BestFitDecreasing.Solver.Fill(fabrics, cancel);
        if (start.Kits.Values.Sum() == start.AtMost)
        {
            return start;
        }

        var model = new CpModel();
        var kits = start.Kits.Keys.ToImmutableSortedDictionary(c => c, c => model.NewIntVar(0, Wanted(fabrics, c), c), StringComparer.Ordinal);
        ImmutableArray<BoltTicks> ticks = [.. fabrics.Select(f => new BoltTicks(f))];
        ImmutableArray<BoltModel> models = [.. ticks.Select(t => new BoltModel(t, model))];
        for (var f = 0; f < fabrics.Length; f++)
        {
            for (var k = 0; k < fabrics[f].Kits.Length; k++)
            {
                model.Add(models[f].Served[k] == kits[fabrics[f].Kits[k].Colorway]);
            }

            models[f].Hint(start.Allocations[f].Uses);
        }

        foreach (var (colorway, count) in start.Kits)
        {
            model.AddHint(kits[colorway], count);
        }

        model.Maximize(LinearExpr.Sum(kits.Values));
        var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 random_seed:1 max_deterministic_time:{budget.Work} max_time_in_seconds:{budget.Clock.TotalSeconds}"
            ),
        };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch))
        {
            status = solver.Solve(model);
        }

        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return start with { AtMost = status == CpSolverStatus.Unknown ? AtMost(start, solver) : start.AtMost };
        }

        var found = kits.ToImmutableSortedDictionary(k => k.Key, k => (int)solver.Value(k.Value), StringComparer.Ordinal);
        var allocations = models.Select((m, f) => Read(m, ticks[f], found, solver)).ToImmutableArray();
        return found.Values.Sum() > start.Kits.Values.Sum() && !allocations.Contains(null)
            ? new(found, AtMost(start, solver), [.. allocations.OfType<BoltAllocation>()])
            : start with { AtMost = AtMost(start, solver) };
    }

    private static int AtMost(KitFilling start, CpSolver solver)
    {
        const double Noise = 1e-6;
        return (int)Math.Min(start.AtMost, Math.Floor(solver.BestObjectiveBound + Noise));
    }

    private static int Wanted(ImmutableArray<BoltProblem> fabrics, string colorway) =>
        fabrics.SelectMany(f => f.Kits).First(k => k.Colorway == colorway).Kits;

    /// <summary>One fabric's part of the answer, recomputed; null where it breaks a rule.</summary>
    private static BoltAllocation? Read(BoltModel model, BoltTicks ticks, ImmutableSortedDictionary<string, int> kits, CpSolver solver)
    {
        long[][] times = [.. model.Times.Select(b => b.Select(solver.Value).ToArray())];
        long[][][] fromLot = [.. model.FromLot.Select(k => k.Select(s => s.Select(solver.Value).ToArray()).ToArray())];
        var uses = LotDealing.Uses(ticks, model, times, fromLot);
        var figures = AllocationFigures.Of(ticks, uses);
        return figures is null || !figures.Served.SequenceEqual(ticks.Problem.Kits.Select(k => kits[k.Colorway]))
            ? null
            : new(uses, figures, AllocationBounds.Goals(ticks, figures), "cp-sat", 0, "done");
    }
}
