using System.Globalization;
using Kitwright.Fabrics;
using Kitwright.Kits;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Optimise.Tests.Allocation;

/// <summary>
/// Bolts of one length, one cut of each item: published bin packing instances of Falkenauer (1996), Schwerin and
/// Wäscher (1997), and Wäscher and Gau (1996), with the fewest bins as collected by BPPLIB (M. Delorme, M. Iori,
/// S. Martello, "BPPLIB: a library for bin packing and cutting stock problems", Optimization Letters 12, 2018).
/// </summary>
public sealed class PublishedBinsTest
{
    private const string Folder = "../shared/checks/cutting";

    public static TheoryData<string> Sets => ["Falkenauer_T", "Schwerin_1", "Waescher"];

    [Theory]
    [MemberData(nameof(Sets))]
    public void Bounds_and_best_fit_enclose_the_fewest_bins(string set)
    {
        var folder = Path.Combine(Root(), Folder);
        if (!Directory.Exists(folder))
        {
            Assert.Skip("skipped: data absent");
        }

        var fewest = File.ReadLines(Path.Combine(folder, "best_known", "1d_bins.csv"))
            .Skip(1)
            .Select(line => line.Split(','))
            .ToDictionary(cells => cells[0], cells => int.Parse(cells[2], CultureInfo.InvariantCulture));
        var seen = 0;
        foreach (var file in Directory.EnumerateFiles(Path.Combine(folder, "bpp1d", set)).Order())
        {
            if (!fewest.TryGetValue(Path.GetFileNameWithoutExtension(file), out var best))
            {
                continue;
            }

            // D. S. Johnson's guarantee for best fit decreasing: at most 11/9 of the fewest, and 4 (from memory).
            var problem = Problem(File.ReadAllLines(file), bolts: ((11 * best) / 9) + 4);
            var found = BestFitDecreasing.Solve(problem, null, TestContext.Current.CancellationToken);
            Assert.Equal(0, found.Figures.Unmet);
            Assert.True(found.Figures.Opened >= best, file);
            Assert.True(AllocationBounds.Opened(new(problem), 0) <= best, file);
            seen++;
        }

        Assert.True(seen > 10);
    }

    private static BoltProblem Problem(string[] lines, int bolts)
    {
        var capacity = int.Parse(lines[1], CultureInfo.InvariantCulture);
        return new(
            "F",
            [.. Enumerable.Range(0, bolts).Select(i => new Bolt($"b{i}", "F", "L", Length.Ticks(capacity)))],
            [.. lines[2..].Where(l => l.Length > 0).Select((line, i) => Item(line, i))],
            Length.Zero,
            Length.Zero,
            AllocationAim.Whole
        );
    }

    private static KitCuts Item(string line, int index)
    {
        int[] cells = [.. line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(c => int.Parse(c, CultureInfo.InvariantCulture))];
        return new($"i{index}", cells[1], [new([new(0, "A", NeedKind.Top, Length.Ticks(cells[0]))])]);
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Kitwright.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
