using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Bench.Cutting;

/// <summary>The published strip instances and the irregular fabrics, read where they lie beside the repository.</summary>
internal sealed class PublishedCases(string folder)
{
    // Lengths of the papers are plain numbers; a small unit keeps the largest within what a roll can hold.
    private static readonly Length PaperUnit = Length.Inches(0, 1, 64);
    private static readonly Length FabricUnit = Length.Inches(0, 1, 16);

    /// <summary>Two stages with trimming, horizontal first cut, no turning: least height in a strip of given width.</summary>
    public IEnumerable<CutCase> Strips()
    {
        foreach (var row in Table.Read(Path.Combine(folder, "best_known", "strip_2stage_fixed_orientation.csv")))
        {
            var swapped = row["orientation"] == "width_height_swapped";
            var demand = Demand(Path.Combine(folder, "twodim", row["instance"] + "_items.csv"), PaperUnit, swapped, mayTurn: false);
            yield return new(
                "strips",
                "strips",
                row["instance"] + (swapped ? " swapped" : ""),
                Problem(PaperUnit * row.Whole("W"), PaperUnit, demand),
                PaperUnit,
                PaperUnit * row.Whole("best_height"),
                row["packingsolver_height_6s"] == "" ? null : PaperUnit * row.Whole("packingsolver_height_6s"),
                row["proved_optimal"] == "1"
            );
        }
    }

    /// <summary>Irregular cutting lists in sixteenths of an inch; pieces that are not oriented may be turned.</summary>
    public IEnumerable<CutCase> Fabrics()
    {
        foreach (var row in Table.Read(Path.Combine(folder, "best_known", "fabric.csv")))
        {
            var name = row["instance"];
            var demand = Demand(Path.Combine(folder, "fabric", name + "_items.csv"), FabricUnit, swapped: false, mayTurn: true);
            yield return new(
                "fabric",
                $"fabric, {row["types"]} types",
                name,
                Problem(Length.Inches(row.Decimal("usable_width_in")), FabricUnit, demand),
                Length.Inch,
                Length.Inches(row.Decimal("best_length_in")),
                ProvedInFile: row["proved_by"] != ""
            );
        }
    }

    private static ImmutableArray<ClothDemand> Demand(string file, Length unit, bool swapped, bool mayTurn) =>
        [
            .. Table
                .Read(file)
                .Select(
                    (row, index) =>
                        new ClothDemand(
                            new($"piece/A{index + 1}"),
                            string.Create(CultureInfo.InvariantCulture, $"A{index + 1}"),
                            unit * row.Whole(swapped ? "HEIGHT" : "WIDTH"),
                            unit * row.Whole(swapped ? "WIDTH" : "HEIGHT"),
                            row.Has("COPIES") ? row.Whole("COPIES") : 1,
                            mayTurn && row["ORIENTED"] == "0"
                        )
                ),
        ];

    private static ClothProblem Problem(Length width, Length unit, ImmutableArray<ClothDemand> demand) =>
        new(
            new("cloth/A"),
            "A",
            ["role"],
            null,
            new(width, Length.Zero, Length.Zero, 2, [unit], unit),
            demand,
            SpareStrips: 0,
            CutGoal.ByTheInch
        );
}
