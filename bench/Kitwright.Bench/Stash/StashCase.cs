using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Cutting.Sheets;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Bench.Stash;

/// <summary>One published instance of cutting from sheets, with the best value known for it.</summary>
/// <param name="BestKnown">Sheets, or cost, as published.</param>
/// <param name="KnownBound">No solution is below it, as published.</param>
internal sealed record StashCase(string Set, string Name, SheetProblem Problem, Rational BestKnown, Rational KnownBound)
{
    /// <summary>The instances of a set, read in place.</summary>
    /// <param name="folder">The folder of the published data.</param>
    public static IEnumerable<StashCase> All(string folder, string set)
    {
        // Bins: three stages, homogeneous, first cut down the height. Stock sizes: two stages with trimming, first cut across.
        var (file, terms) = set switch
        {
            "bins" => ("2d_bin_packing_3hvo_alvarez2002.csv", new SheetTerms(3, FirstCut.Along, LastCut.Homogeneous, Length.Zero, Length.Zero, [1])),
            _ => (
                "2d_variable_sized_bin_packing_2nho_cintra2008.csv",
                new SheetTerms(2, FirstCut.Across, LastCut.NonExact, Length.Zero, Length.Zero, [1])
            ),
        };
        foreach (var row in Rows(Path.Combine(folder, "best_known", file)))
        {
            var path = Path.Combine(folder, "twodim", row["Path"]);
            var sheets = Rows(path + "_bins.csv")
                .Select(bin => new StockSheet(
                    new PathId("sheet").Child("bin", bin["ID"]),
                    bin["ID"],
                    InInches(bin["WIDTH"]),
                    InInches(bin["HEIGHT"]),
                    null,
                    bin.TryGetValue("COST", out var cost) ? Number(cost) : 1
                ));
            var pieces = Rows(path + "_items.csv")
                .Select(item => new SheetDemand(
                    new PathId("piece").Child("item", item["ID"]),
                    item["ID"],
                    InInches(item["WIDTH"]),
                    InInches(item["HEIGHT"]),
                    item.TryGetValue("COPIES", out var copies) ? int.Parse(copies, CultureInfo.InvariantCulture) : 1,
                    MayTurn: false,
                    []
                ));
            yield return new(
                set,
                row["Path"],
                new(terms, [.. sheets], [.. pieces], SheetGoal.Cost),
                Number(row["Best known solution value"]),
                Number(row["Best known bound"])
            );
        }
    }

    private static Length InInches(string text) => Length.Inches(Number(text));

    private static Rational Number(string text) => RationalText.TryParse(text, out var number) ? number : throw new FormatException(text);

    private static IEnumerable<ImmutableDictionary<string, string>> Rows(string path)
    {
        var lines = File.ReadAllLines(path);
        var names = lines[0].Split(',');
        return lines.Skip(1).Select(line => names.Zip(line.Split(',')).ToImmutableDictionary(pair => pair.First, pair => pair.Second));
    }
}
