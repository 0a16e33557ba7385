using System.Globalization;
using Kitwright.Checking.Sheets;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Optimise.Cutting;
using Kitwright.Optimise.Sheets;

namespace Kitwright.Bench.Stash;

/// <summary>
/// <c>./dev bench stash [--set bins|sizes] [--only TEXT] [--seconds S] [--seed N] [--out FILE]</c>: cutting from sheets
/// on published instances, with the best values known. One row a case as CSV; a summary in lines that begin with #.
/// </summary>
internal static class StashBench
{
    private static readonly string[] Sets = ["bins", "sizes"];

    public static int Run(IReadOnlyList<string> args)
    {
        var options = new Dictionary<string, string>();
        for (var i = 0; i + 1 < args.Count; i += 2)
        {
            options[args[i]] = args[i + 1];
        }

        var folder = Path.Combine(Root(), "..", "shared", "checks", "cutting");
        if (!Directory.Exists(folder))
        {
            Console.Out.WriteLine("# stash: skipped: data absent");
            return 0;
        }

        var seconds = double.Parse(options.GetValueOrDefault("--seconds", "20"), CultureInfo.InvariantCulture);
        var seed = int.Parse(options.GetValueOrDefault("--seed", "0"), CultureInfo.InvariantCulture);
        using var file = options.GetValueOrDefault("--out") is { } path ? new StreamWriter(path) : null;
        var csv = file ?? Console.Out;
        csv.WriteLine("set,instance,value,bound,status,best_known,known_bound,above_best_known_percent,cpu_seconds,work,stopped_by,checked");
        var rows = new List<(StashCase Case, SheetPlan Plan)>();
        foreach (var set in Sets.Where(s => s.StartsWith(options.GetValueOrDefault("--set", ""), StringComparison.Ordinal)))
        {
            foreach (var @case in StashCase.All(folder, set).Where(c => c.Name.Contains(options.GetValueOrDefault("--only", ""), StringComparison.Ordinal)))
            {
                var started = Environment.CpuUsage.TotalTime;
                var plan = SheetCutter.Cut(@case.Problem, new WorkBudget("seconds", (long)(seconds * 1e9), TimeSpan.FromHours(1)), seed).Value!;
                var took = (Environment.CpuUsage.TotalTime - started).TotalSeconds;
                rows.Add((@case, plan));
                csv.WriteLine(
                    string.Join(
                        ',',
                        set,
                        @case.Name,
                        plan.Cost,
                        plan.Proof.Bound,
                        plan.Proof.Status,
                        @case.BestKnown,
                        @case.KnownBound,
                        Above(@case, plan).ToString("0.000", CultureInfo.InvariantCulture),
                        took.ToString("0.00", CultureInfo.InvariantCulture),
                        plan.Proof.Work,
                        plan.Proof.StoppedBy,
                        SheetChecker.Check(plan) is [var first, ..] ? first.Rule : "yes"
                    )
                );
                csv.Flush();
            }

            var done = rows.Where(row => row.Case.Set == set).ToList();
            if (done.Count > 0)
            {
                Console.Out.WriteLine(
                    $"# {set}: {done.Count} instances, {done.Count(r => r.Plan.Cost <= r.Case.BestKnown)} at or below the best known, "
                        + $"{done.Count(r => r.Plan.Proof.Status != Plans.ProofStatus.Within)} proved, "
                        + $"worst {done.Max(r => Above(r.Case, r.Plan)).ToString("0.000", CultureInfo.InvariantCulture)} % above, "
                        + $"all {done.Sum(r => r.Plan.Cost.ToDouble()).ToString("0", CultureInfo.InvariantCulture)} "
                        + $"against {done.Sum(r => r.Case.BestKnown.ToDouble()).ToString("0", CultureInfo.InvariantCulture)}"
                );
            }
        }

        return 0;
    }

    private static double Above(StashCase @case, SheetPlan plan) => ((plan.Cost / @case.BestKnown) - 1).ToDouble() * 100;

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Kitwright.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The benchmark runs inside the repository.");
        }

        return folder.FullName;
    }
}
