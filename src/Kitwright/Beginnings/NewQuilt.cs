using System.Collections.Immutable;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Beginnings;

/// <summary>What a quilt is begun with: a block of the book, its size, how many, what lies between them and round them.</summary>
/// <param name="BlockWidth">Finished.</param>
/// <param name="Sashing">Finished width, with cornerstones and all round; zero for edge to edge.</param>
/// <param name="Border">Finished width; zero for none.</param>
public sealed record NewQuilt(string Name, BookBlock Block, LengthUnit Units, Length BlockWidth, int Columns, int Rows, Length Sashing, Length Border)
{
    /// <summary>The usual beginning with a block: about a lap quilt (common practice, no source).</summary>
    public static NewQuilt With(BookBlock block, LengthUnit units) =>
        new(block.Name, block, units, BlockWidths.Usual(block, units), 4, 5, Length.Zero, BlockWidths.In(units, 4, 10));

    /// <summary>The quilt, or what stands in its way.</summary>
    /// <remarks>
    /// Each part has a role of its own, so that any of them can have its own fabric later. Places of findings are the
    /// names of the parameters in lower case.
    /// </remarks>
    public Checked<Quilt> Make()
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (Name.Length > QuiltLimits.Name)
        {
            findings.Add(Finding.Of("begin.name", "name", ("length", Name.Length), ("most", QuiltLimits.Name)));
        }

        Check("columns", Columns, findings);
        Check("rows", Rows, findings);
        Check("size", BlockWidth, Length.Inch, Length.Inches(60), findings);
        Check("sashing", Sashing, Length.Zero, Length.Inches(20), findings);
        Check("border", Border, Length.Zero, Length.Inches(40), findings);
        if (findings.Count > 0)
        {
            return Checked<Quilt>.Failed([.. findings]);
        }

        var quilt = Of(Block.At(BlockWidth));
        var faults = QuiltRules.Check(quilt);
        return faults.Any(f => f.Weight == Weight.Fault) ? new(null, faults) : new(quilt, faults);
    }

    private Quilt Of(Block block)
    {
        var roles = Block.Roles.Where(role => Block.Patches.Any(p => p.Role == role.Id)).ToList();
        var sashing = Sashing.Sign > 0 ? Role("sashing", Value.Light) : null;
        var posts = Sashing.Sign > 0 ? Role("cornerstones", Value.Dark) : null;
        var border = Border.Sign > 0 ? Role("border", null) : null;
        var binding = Role("binding", Value.Dark);
        var backing = Role("backing", null);
        return new(
            Name.Trim() is { Length: > 0 } name ? name : Block.Name,
            null,
            Units,
            // A quarter of an inch, or three quarters of a centimeter (common practice, no source).
            BlockWidths.In(Units, new(1, 4), new(3, 4)),
            BlockWidths.In(Units, new(1, 8), new(1, 2)),
            null,
            [.. roles],
            [block],
            new(
                SettingKind.Straight,
                Columns,
                Rows,
                [[new Cell(block.Id, 0, false)]],
                sashing is null ? null : new(Sashing, sashing, posts, Outer: true)
            ),
            border is null ? [] : [new(Border, border, BorderStyle.Butted, null, StripGrain.Crosswise)],
            new(binding, BlockWidths.In(Units, new(5, 2), 6), BlockWidths.In(Units, 10, 25), StripGrain.Crosswise),
            new(backing, BlockWidths.In(Units, 4, 10), BlockWidths.In(Units, new(1, 2), 1), null),
            ImmutableSortedDictionary<string, string>.Empty,
            []
        );

        string Role(string name, Value? value)
        {
            var id = roles.Exists(role => role.Id == name) ? $"quilt-{name}" : name;
            roles.Add(new(id, name, value));
            return id;
        }
    }

    private static void Check(string place, int count, ImmutableArray<Finding>.Builder findings)
    {
        if (count is < 1 or > QuiltLimits.CellsAcross)
        {
            findings.Add(Finding.Of("begin.count", place, ("count", count), ("most", QuiltLimits.CellsAcross)));
        }
    }

    private static void Check(string place, Length length, Length least, Length most, ImmutableArray<Finding>.Builder findings)
    {
        if (length < least || length > most)
        {
            findings.Add(Finding.Of("begin.length", place, ("length", length), ("least", least), ("most", most)));
        }
    }
}
