using System.Globalization;
using Kitwright.Cutting;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Bench.Cutting;

/// <summary>
/// <c>./dev bench cutting [--set NAME] [--only TEXT] [--part I/N] [--seconds S] [--out FILE]</c>: the cutting engine on
/// published instances, irregular fabrics and quilts. One row a case as CSV; a summary in lines that begin with #.
/// </summary>
internal static class CuttingBench
{
    private static readonly string[] Sets = ["fabric", "strips", "quilts-step", "quilts-inch"];

    public static int Run(IReadOnlyList<string> args)
    {
        var options = new Dictionary<string, string>();
        for (var i = 0; i + 1 < args.Count; i += 2)
        {
            options[args[i]] = args[i + 1];
        }

        var only = options.GetValueOrDefault("--only", "");
        var (part, parts) = Part(options.GetValueOrDefault("--part", "1/1"));
        using var file = options.GetValueOrDefault("--out") is { } path ? new StreamWriter(path) : null;
        var csv = file ?? Console.Out;
        csv.WriteLine(CutRow.Header);
        var rows = new List<CutRow>();
        var warm = false;
        foreach (var set in Sets.Where(s => s.StartsWith(options.GetValueOrDefault("--set", ""), StringComparison.Ordinal)))
        {
            var budget = Budget(set, options.GetValueOrDefault("--seconds"));
            foreach (var @case in Cases(set).Where(c => c.Name.Contains(only, StringComparison.Ordinal)).Where((_, i) => i % parts == part - 1))
            {
                if (!warm)
                {
                    // What a program costs once, when it starts, is not the engine's.
                    CutRow.Measure(@case, WorkBudget.WhileYouType);
                    warm = true;
                }

                rows.Add(CutRow.Measure(@case, budget));
                csv.WriteLine(rows[^1]);
                csv.Flush();
            }
        }

        foreach (var line in Summary.Of(rows))
        {
            Console.Out.WriteLine(line);
        }

        return 0;
    }

    private static IEnumerable<CutCase> Cases(string set)
    {
        var root = Root();
        if (set.StartsWith("quilts", StringComparison.Ordinal))
        {
            return new QuiltCases(root).All(set == "quilts-step" ? CutGoal.ByTheStep : CutGoal.ByTheInch);
        }

        var folder = Path.Combine(root, "..", "shared", "checks", "cutting");
        if (!Directory.Exists(folder))
        {
            Console.Out.WriteLine($"# {set}: skipped: data absent");
            return [];
        }

        var published = new PublishedCases(folder);
        return set == "fabric" ? published.Fabrics() : published.Strips();
    }

    private static WorkBudget Budget(string set, string? seconds)
    {
        var asked = seconds ?? set switch
        {
            "fabric" => "10",
            "strips" => "6",
            _ => null,
        };
        var budget = asked is null ? WorkBudget.Normal : WorkBudget.OfSeconds(double.Parse(asked, CultureInfo.InvariantCulture));
        // On a busy machine the clock must not end what the work limit measures.
        return budget with { SafetyStop = TimeSpan.FromHours(1) };
    }

    private static (int Part, int Parts) Part(string text)
    {
        var numbers = text.Split('/');
        return (int.Parse(numbers[0], CultureInfo.InvariantCulture), int.Parse(numbers[1], CultureInfo.InvariantCulture));
    }

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
