using System.Collections.Immutable;
using Kitwright.Fabrics;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Web;

/// <summary>Four star blocks typed by hand, in two colorways: enough for the pages to stand on.</summary>
public sealed class SampleWorkbench : IWorkbench
{
    private static readonly Quilt Stars = new(
        "Sample stars",
        "Four stars, edge to edge.",
        LengthUnit.Inch,
        Length.Inches(0, 1, 4),
        Length.Inches(0, 1, 8),
        null,
        [new("background", "background", Value.Light), new("star", "star", Value.Dark)],
        [],
        new(SettingKind.Straight, 2, 2, [[new("star", 0, false)]], null),
        [],
        new("star", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
        new("background", Length.Inches(4), Length.Inches(0, 1, 2), null),
        ImmutableSortedDictionary<string, string>.Empty,
        [Way("Harvest", "K1", "K2"), Way("Harbor", "K1", "K3")]
    );

    public ImmutableArray<ShelfQuilt> Quilts { get; } = [new("sample-stars", Stars)];

    public ImmutableArray<Fabric> Fabrics { get; } =
        [Cloth("K1", "Oat", "#efe6d2"), Cloth("K2", "Rust", "#a8481f"), Cloth("K3", "Tide", "#2b5a7a")];

    public Planned Plan(Quilt quilt, string? colorway)
    {
        var chosen = quilt.Colorway(colorway ?? "");
        var design = Design();
        CutPiece[] pieces =
        [
            Piece("A1", "background", 3, 32),
            Piece("B1", "star", 3, 16),
            Piece("B2", "star", 6, 4),
        ];
        var plan = new QuiltPlan(
            quilt.Name,
            chosen?.Name,
            "SAMPLE",
            "sample",
            "0",
            "none",
            quilt.Seam,
            quilt.RulerStep,
            [.. "AB".Zip(quilt.Roles, (letter, role) => FabricOf(letter, role, chosen))],
            design,
            [.. pieces],
            [],
            new([]),
            new(Length.Inches(96), Length.Inches(10), Length.Inches(2, 1, 2), 3, new("piece/B3")),
            new(Length.Inches(4), Length.Inches(32), Length.Inches(32), 1, false, Length.Inches(40), Length.Inches(32), Length.Inches(0, 1, 2), Length.Yards(1)),
            new([], null)
        );
        var links = design.Blocks[0].Patches.Select((patch, i) => new TraceLink(patch.Id, new(i == 0 ? "piece/B2" : patch.Role == "star" ? "piece/B1" : "piece/A1"), new("block/star")));
        return new(plan, [], new([.. links]));
    }

    private PlanFabric FabricOf(char letter, Role role, Colorway? colorway)
    {
        var fabric = colorway is null ? null : Fabrics.First(f => f.Number == colorway.Fabrics[role.Id]);
        return new(letter.ToString(), [role.Id], fabric?.Number, fabric?.Name ?? role.Name, fabric?.Color ?? "#cccccc");
    }

    private static CutPiece Piece(string label, string role, int inches, int count) =>
        new(new($"piece/{label}"), label, role, Length.Inches(inches), Length.Inches(inches), count, 0, true, Message.Plain(role), Message.Plain($"{inches} in"));

    private static Colorway Way(string name, string background, string star) =>
        new(name, ImmutableSortedDictionary<string, string>.Empty.Add("background", background).Add("star", star));

    private static Fabric Cloth(string number, string name, string color) =>
        new(number, name, Length.Inches(42), 1200, color, new(PrintKind.Solid, color, 1));

    private static Design Design()
    {
        List<Patch> patches = [];
        patches.Add(Patch("star", Polygon.Rectangle(3, 3, 9, 9)));
        for (var turn = 0; turn < 4; turn++)
        {
            var motion = Motion.Shift(-6, -6).Then(Motion.QuarterTurns(turn)).Then(Motion.Shift(6, 6));
            patches.Add(Patch("background", Polygon.Rectangle(0, 0, 3, 3).Moved(motion)));
            patches.Add(Patch("background", new Polygon([new(3, 0), new(9, 0), new(6, 3)]).Moved(motion)));
            patches.Add(Patch("star", new Polygon([new(3, 0), new(6, 3), new(3, 3)]).Moved(motion)));
            patches.Add(Patch("star", new Polygon([new(9, 0), new(9, 3), new(6, 3)]).Moved(motion)));
        }

        var block = new BlockDesign("star", "Star", Length.Inches(12), Length.Inches(12), [.. patches]);
        var places =
            from row in Enumerable.Range(1, 2)
            from column in Enumerable.Range(1, 2)
            select new Placement(new($"place/r{row}/c{column}"), "star", Motion.Shift((column - 1) * 12, (2 - row) * 12));
        return new(Length.Inches(24), Length.Inches(24), [block], [.. places], []);

        Patch Patch(string role, Polygon shape) => new(new($"block/star/patch/{patches.Count + 1}"), role, shape);
    }
}
