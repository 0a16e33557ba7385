using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using Kitwright.Plans;
using Kitwright.Pressing;

namespace Kitwright.Optimise.Pressing;

/// <summary>
/// Fewest crossings that do not nest, then fewest seams pressed open, then what the seams would rather: one model in
/// constraint programming, with open as a third state of a seam.
/// </summary>
/// <remarks>
/// One thread and a deterministic work limit: the same problem gives the same answer. What comes back is held against
/// the problem again; where it breaks a rule, or none comes, the greedy answer stands.
/// </remarks>
public static class CpSatPressing
{
    private const double Work = 2;
    private const double Seconds = 10;

    /// <summary>Habits weigh little against a seam that lies open, however many they are.</summary>
    private const int MostLiking = 1000;

    public static OpenSeams Solver(CancellationToken cancel = default) => problem => Solve(problem, cancel);

    public static PressingAnswer Solve(PressingProblem problem, CancellationToken cancel = default)
    {
        var start = GreedyOpening.Solve(problem);
        var model = new CpModel();
        var open = problem.Seams.Select((_, i) => model.NewBoolVar($"open{i}")).ToArray();
        var top = problem.Seams.Select((_, i) => model.NewBoolVar($"top{i}")).ToArray();
        foreach (var tie in problem.Ties)
        {
            model.Add(open[tie.One] == open[tie.Other]);
            Agree(model, top, tie);
        }

        var unnested = problem.Crossings.Select((c, i) => model.NewBoolVar($"unnested{i}")).ToArray();
        for (var i = 0; i < unnested.Length; i++)
        {
            var crossing = problem.Crossings[i];
            model.AddImplication(open[crossing.One], unnested[i]);
            model.AddImplication(open[crossing.Other], unnested[i]);
            model.AddBoolOr([open[crossing.One], open[crossing.Other], unnested[i].Not()]);
            if (crossing.One == crossing.Other)
            {
                if (!crossing.Alike)
                {
                    model.Add(open[crossing.One] == 1);
                }
            }
            else
            {
                Agree(model, top, crossing).OnlyEnforceIf(unnested[i].Not());
            }
        }

        var counts = LinearExpr.WeightedSum(unnested, problem.Crossings.Select(c => (long)c.Weight));
        var opens = LinearExpr.Sum(open);
        var likes = LinearExpr.WeightedSum(
            problem.Seams.Select((_, i) => Lying(model, open[i], top[i])),
            problem.Seams.Select(s => (long)Math.Clamp(s.TowardTop, -MostLiking, MostLiking))
        );
        long range = (2L * MostLiking * open.Length) + 1;
        model.Minimize((counts * (range * (open.Length + 1))) + (opens * range) - likes);
        Hint(model, problem, start, open, top);
        return Answer(problem, start, Search(model, cancel, out var solver), solver, open, top, range * (open.Length + 1));
    }

    /// <summary>1 toward the top layer, -1 toward the bottom, 0 where the seam is open, whatever its side would be.</summary>
    private static IntVar Lying(CpModel model, BoolVar open, BoolVar top)
    {
        var lying = model.NewIntVar(-1, 1, "");
        model.Add(lying == 0).OnlyEnforceIf(open);
        model.Add(lying == 1).OnlyEnforceIf([open.Not(), top]);
        model.Add(lying == -1).OnlyEnforceIf([open.Not(), top.Not()]);
        return lying;
    }

    private static Constraint Agree(CpModel model, BoolVar[] top, SeamPair pair) =>
        pair.Alike ? model.Add(top[pair.One] == top[pair.Other]) : model.Add(top[pair.One] + top[pair.Other] == 1);

    private static void Hint(CpModel model, PressingProblem problem, PressingAnswer start, BoolVar[] open, BoolVar[] top)
    {
        for (var i = 0; i < problem.Seams.Length; i++)
        {
            model.AddHint(open[i], start.Choices[i] == PressToward.Open);
            model.AddHint(top[i], start.Choices[i] == PressToward.Top);
        }
    }

    private static CpSolverStatus Search(CpModel model, CancellationToken cancel, out CpSolver solver)
    {
        solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 random_seed:1 max_deterministic_time:{Work} max_time_in_seconds:{Seconds}"
            ),
        };
        using (cancel.Register(solver.StopSearch))
        {
            return solver.Solve(model);
        }
    }

    private static PressingAnswer Answer(
        PressingProblem problem,
        PressingAnswer start,
        CpSolverStatus status,
        CpSolver solver,
        BoolVar[] open,
        BoolVar[] top,
        long scale
    )
    {
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return start;
        }

        ImmutableArray<PressToward> choices =
        [
            .. open.Zip(top, (o, t) => solver.BooleanValue(o) ? PressToward.Open : solver.BooleanValue(t) ? PressToward.Top : PressToward.Bottom),
        ];
        var unnested = problem.Unnested(choices);
        if (!problem.Allows(choices) || unnested > start.Unnested)
        {
            return start;
        }

        // Likings take from the sum at most half of its lower digits, so the bound is rounded up after they are given back.
        var bound = status == CpSolverStatus.Optimal ? unnested : (long)Math.Floor((solver.BestObjectiveBound + (scale / 2)) / scale);
        return new(choices, unnested, Math.Clamp(bound, 0, unnested));
    }
}
