using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using Kitwright.Kits;
using Kitwright.Measure;

namespace Kitwright.Optimise.Allocation;

/// <summary>
/// Cuts from several bolts by constraint programming: one search a goal, each starting from the best so far and
/// holding the goals before it. Where best fit decreasing meets the simple bounds, no search is made.
/// </summary>
/// <remarks>
/// One thread and a deterministic work limit: the same problem gives the same answer. The clock is a safety stop. What
/// comes back is recomputed; an answer that breaks a rule of the problem gives way to best fit decreasing.
/// </remarks>
public static class CpSatBolts
{
    private const string Method = "cp-sat";

    /// <summary>The search as a solver: kits that need several short fabrics are filled by one model over all of them.</summary>
    public static IBoltSolver Solver(BoltBudget budget) => new CpSatSolver(budget);

    /// <param name="start">An allocation to begin from, beside best fit's own.</param>
    public static BoltAllocation Solve(BoltProblem problem, BoltBudget budget, BoltAllocation? start = null, CancellationToken cancel = default)
    {
        var first = BestFitDecreasing.Solve(problem, start, cancel);
        var ticks = new BoltTicks(problem);
        if (first.Proved || AllocationFigures.Of(ticks, first.Uses) is null)
        {
            return first;
        }

        var search = new Search(ticks, first, budget, cancel);
        foreach (var goal in first.Goals.Select(g => g.Goal))
        {
            search.Improve(goal);
        }

        return search.Best;
    }

    /// <summary>The search over one problem, goal by goal.</summary>
    private sealed class Search(BoltTicks ticks, BoltAllocation start, BoltBudget budget, CancellationToken cancel)
    {
        private readonly BoltModel model = new(ticks, new());
        private readonly Stopwatch clock = Stopwatch.StartNew();

        public BoltAllocation Best { get; private set; } = start;

        public void Improve(AllocationGoal goal)
        {
            var expression = goal switch
            {
                AllocationGoal.Unmet => model.Met(),
                AllocationGoal.Waste => model.Waste(),
                AllocationGoal.Opened => LinearExpr.Sum(model.Opened),
                _ => model.Kept(),
            };
            if (!BoundOf(goal).Proved && Best.StoppedBy is ("done" or "work-limit"))
            {
                Run(goal, expression);
            }

            Hold(goal, expression);
        }

        private void Run(AllocationGoal goal, LinearExpr expression)
        {
            model.Model.ClearHints();
            model.Hint(Best.Uses);
            if (IsMost(goal))
            {
                model.Model.Maximize(expression);
            }
            else
            {
                model.Model.Minimize(expression);
            }

            var solver = new CpSolver { StringParameters = Parameters(goal) };
            CpSolverStatus status;
            using (cancel.Register(solver.StopSearch))
            {
                status = solver.Solve(model.Model);
            }

            if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            {
                Take(solver);
            }

            var work = Best.Work + solver.Response!.DeterministicTime;
            // Best fit decreasing is a solution, so a model that has none is a fault of ours.
            var stopped = status switch
            {
                CpSolverStatus.Optimal => Best.StoppedBy,
                CpSolverStatus.ModelInvalid or CpSolverStatus.Infeasible => "fault",
                _ when cancel.IsCancellationRequested => "cancel",
                _ when clock.Elapsed >= budget.Clock => "clock",
                _ => "work-limit",
            };
            Best = Best with { Method = Method, Work = work, StoppedBy = stopped };
            if (stopped != "fault")
            {
                Tighten(goal, BoundOf(goal, solver.BestObjectiveBound));
            }
        }

        private string Parameters(AllocationGoal goal)
        {
            // What a goal may have used together with those before it; what one leaves, the next may take.
            var share = goal switch
            {
                AllocationGoal.Unmet => 0.4,
                AllocationGoal.Waste => 0.8,
                AllocationGoal.Opened => 0.9,
                _ => 1,
            };
            var work = Math.Max(0, (budget.Work * share) - Best.Work);
            var seconds = Math.Max(0, (budget.Clock - clock.Elapsed).TotalSeconds);
            return string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 random_seed:1 max_deterministic_time:{work} max_time_in_seconds:{seconds}"
            );
        }

        private void Take(CpSolver solver)
        {
            long[][] times = [.. model.Times.Select(b => b.Select(solver.Value).ToArray())];
            long[][][] fromLot = [.. model.FromLot.Select(k => k.Select(s => s.Select(solver.Value).ToArray()).ToArray())];
            var uses = LotDealing.Uses(ticks, model, times, fromLot);
            if (AllocationFigures.Of(ticks, uses) is { } figures && figures.CompareTo(Best.Figures) < 0)
            {
                // Goals are only ever held tighter, so a bound found before still holds.
                var goals = AllocationBounds.Goals(ticks, figures).Zip(Best.Goals, (now, before) => Tighter(now, before.Bound));
                Best = Best with { Uses = uses, Figures = figures, Goals = [.. goals] };
            }
        }

        private GoalBound BoundOf(AllocationGoal goal) => Best.Goals.Single(g => g.Goal == goal);

        /// <summary>The solver's bound, a double beside whole numbers, as a count or as inches.</summary>
        private Rational BoundOf(AllocationGoal goal, double bound)
        {
            const double Noise = 1e-6;
            var whole = (long)(IsMost(goal) ? Math.Floor(bound + Noise) : Math.Ceiling(bound - Noise));
            return goal switch
            {
                AllocationGoal.Unmet => ticks.Problem.Kits.Sum(k => (long)k.Kits * k.CutsPerKit) - whole,
                AllocationGoal.Opened => whole,
                _ => Length.Ticks(whole * model.Unit).InInches,
            };
        }

        private void Tighten(AllocationGoal goal, Rational bound) =>
            Best = Best with { Goals = [.. Best.Goals.Select(g => g.Goal == goal ? Tighter(g, bound) : g)] };

        private static GoalBound Tighter(GoalBound goal, Rational bound) =>
            goal with
            {
                Bound = goal.Goal == AllocationGoal.Kept ? Rational.Min(goal.Bound, bound) : Rational.Max(goal.Bound, bound),
            };

        private void Hold(AllocationGoal goal, LinearExpr expression)
        {
            var value = BoundOf(goal).Value;
            if (goal == AllocationGoal.Unmet)
            {
                var met = ticks.Problem.Kits.Select((k, i) => (long)Best.Figures.Served[i] * k.CutsPerKit).Sum();
                model.Model.Add(expression >= met);
            }
            else if (goal == AllocationGoal.Waste)
            {
                Length.Inches(value).TryTicks(out var waste);
                model.Model.Add(expression <= waste / model.Unit);
            }
            else if (goal == AllocationGoal.Opened)
            {
                model.Model.Add(expression <= (long)value.Numerator);
            }
        }

        // Unmet cuts are made least by making the met ones most.
        private static bool IsMost(AllocationGoal goal) => goal is AllocationGoal.Unmet or AllocationGoal.Kept;
    }
}
