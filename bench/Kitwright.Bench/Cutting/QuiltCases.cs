using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Cutting;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Quilts;

namespace Kitwright.Bench.Cutting;

/// <summary>
/// The cloths of the demo quilts, and of quilts from the block book: every block in four sizes of quilt, with sashing,
/// borders and a choice of fabrics drawn by a seed. Blocks that cannot be pieced yet are passed over.
/// </summary>
internal sealed class QuiltCases(string root)
{
    /// <summary>Crib, throw, full, king: blocks across and down, finished width of a block, borders from the inside.</summary>
    private static readonly (string Name, int Columns, int Rows, int Block, int[] Borders)[] Sizes =
    [
        ("crib", 4, 5, 9, [3]),
        ("throw", 5, 6, 12, [2, 5]),
        ("full", 7, 8, 10, [2, 6]),
        ("king", 9, 9, 12, [3]),
    ];

    public IEnumerable<CutCase> All(CutGoal goal)
    {
        var set = goal == CutGoal.ByTheStep ? "quilts-step" : "quilts-inch";
        foreach (var (name, quilt, oneLength, isDemo) in Quilts())
        {
            foreach (var problem in ClothsOf(quilt, oneLength))
            {
                yield return new(set, set, $"{name}/{problem.Letter}", problem with { Goal = goal }, Length.Inch, Quilt: name, IsDemo: isDemo);
            }
        }
    }

    private IEnumerable<(string Name, Quilt Quilt, bool OneLength, bool IsDemo)> Quilts()
    {
        foreach (var path in Directory.EnumerateFiles(Path.Combine(root, "examples", "quilts"), "*.json").Order(StringComparer.Ordinal))
        {
            yield return (Path.GetFileNameWithoutExtension(path), QuiltFile.Read(File.ReadAllText(path)).Value!, false, true);
        }

        foreach (var block in BlockBook.All)
        {
            foreach (var size in Sizes)
            {
                var random = new Random(BlockBook.All.IndexOf(block) + (1000 * size.Columns));
                yield return ($"{block.Id}-{size.Name}", Quilt(block, size, random), random.Next(2) == 0, false);
            }
        }
    }

    /// <summary>What the planner would have cut; nothing where the quilt cannot be pieced.</summary>
    private static List<ClothProblem> ClothsOf(Quilt quilt, bool oneLength)
    {
        var problems = new List<ClothProblem>();
        var options = PlanOptions.Usual with { OneLengthPerFabric = oneLength };
        var colorway = quilt.Colorways.IsEmpty ? null : quilt.Colorways[0];
        QuiltPlanner.Plan(
            quilt,
            colorway,
            [],
            options,
            problem =>
            {
                problems.Add(problem);
                return FirstFit.Plan(problem);
            }
        );
        return problems;
    }

    private static Quilt Quilt(BookBlock book, (string Name, int Columns, int Rows, int Block, int[] Borders) size, Random random)
    {
        // The nearest size in which a square of the block's grid is a whole number of quarter inches.
        var unit = Math.Max(1, (int)Math.Round(4.0 * size.Block / book.Grid.Columns));
        var block = book.At(Length.Inches(new Rational(unit, 4)) * book.Grid.Columns);
        var sashing = random.Next(3) switch
        {
            0 => null,
            1 => new Sashing(Length.Inches(new Rational(random.Next(4, 10), 4)), "sashing", null, random.Next(2) == 0),
            _ => new Sashing(Length.Inches(new Rational(random.Next(4, 10), 4)), "sashing", "post", random.Next(2) == 0),
        };
        string[] extra = [.. sashing is null ? [] : new[] { "sashing" }, .. sashing?.Cornerstone is null ? [] : new[] { "post" }];
        string[] borders = [.. size.Borders.Select((_, i) => $"border{i + 1}")];
        string[] added = [.. extra, .. borders, "binding", "backing"];
        string[] roles = [.. book.Roles.Select(r => r.Id), .. added];
        // Fewer fabrics than roles, so that some serve several.
        var fabrics = roles.ToImmutableSortedDictionary(r => r, _ => $"F{random.Next(1 + (roles.Length * 2 / 3))}");
        return new(
            book.Name,
            null,
            LengthUnit.Inch,
            Length.Inches(0, 1, 4),
            Length.Inches(0, 1, 8),
            null,
            [.. book.Roles, .. added.Select(r => new Role(r, r, null))],
            [block],
            new(SettingKind.Straight, size.Columns, size.Rows, [[new(block.Id, 0, false)]], sashing),
            [.. size.Borders.Select((width, i) => new Border(Length.Inches(width), borders[i], BorderStyle.Butted, null, StripGrain.Crosswise))],
            new("binding", Length.Inches(2, 1, 2), Length.Inches(10), StripGrain.Crosswise),
            new("backing", Length.Inches(4), Length.Inches(0, 1, 2), null),
            ImmutableSortedDictionary<string, string>.Empty,
            [new("seeded", fabrics)]
        );
    }
}
