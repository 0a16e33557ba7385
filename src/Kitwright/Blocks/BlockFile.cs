using System.Collections.Immutable;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Quilts.Partitions;
using Kitwright.Quilts.Reading;

namespace Kitwright.Blocks;

/// <summary>
/// The block file: JSON with <c>"format": "kitwright-block"</c>, described by docs/schema/block.v1.schema.json.
/// Patches are drawn in units of the grid, or the block is one of the log-cabin family and states its parameters.
/// </summary>
public static class BlockFile
{
    public const string Format = "kitwright-block";
    public const int Version = 1;

    /// <summary>Reads and checks a block. Never throws for what a file holds; places are JSON pointers.</summary>
    public static Checked<BookBlock> Read(string json)
    {
        var (block, findings) = ReadDrawing(json);
        return new(findings.Any(f => f.Weight == Weight.Fault) ? null : block, findings);
    }

    /// <summary>
    /// As <see cref="Read"/>, with the drawing even where its patches are at fault: for showing the place of each. Null
    /// where the file has no patches to draw.
    /// </summary>
    public static (BookBlock? Drawing, ImmutableArray<Finding> Findings) ReadDrawing(string json)
    {
        var source = new Source();
        var report = source.Report;
        using var document = JsonText.Parse(json, report);
        if (document is null)
        {
            return (null, report.ToImmutable());
        }

        var block = ReadBlock(new Node(document.RootElement, "", source));
        if (report.HasFault)
        {
            return (null, report.ToImmutable());
        }

        CheckRoles(block, report);
        foreach (var finding in Partition.Check(block.At(Length.Inches(block.Grid.Columns)), ""))
        {
            report.Add(finding);
        }

        return (block, report.ToImmutable());
    }

    /// <summary>Which patch a finding's place names; null where it is none of them.</summary>
    public static int? PatchOf(Finding finding) =>
        finding.Place.Split('/') is ["", "patches", var index, ..] && int.TryParse(index, out var i) ? i : null;

    /// <summary>The block by its patches, as text that <see cref="Read"/> takes back to an equal drawing.</summary>
    public static string Write(BookBlock block) => BlockWriter.Write(block);

    private static BookBlock ReadBlock(Node node)
    {
        using var fields = node.Fields();
        FileHead.Check(fields, Format, Version, node.Source.Report);
        var id = fields.Required("id").Id();
        var name = fields.Required("name").Text();
        var family = fields.Required("family").OneOf<BlockFamily>();
        var source = fields.Optional("source")?.Text();
        if (fields.Optional("logCabin") is { } parameters)
        {
            return LogCabinReader.Read(parameters) is { } plan
                ? LogCabin.Draw(id, name, source, plan)
                : new(id, name, family, source, new(1, 1), [], []);
        }

        if (fields.Optional("pineapple") is { } pineapple)
        {
            return LogCabinReader.ReadPineapple(pineapple) is { } plan
                ? Pineapple.Draw(id, name, source, plan)
                : new(id, name, family, source, new(1, 1), [], []);
        }

        return new(
            id,
            name,
            family,
            source,
            BlockReader.ReadGrid(fields.Required("grid")),
            [.. fields.Required("roles").Items(1, QuiltLimits.Roles).Select(QuiltReader.ReadRole)],
            BlockReader.ReadPatches(fields.Required("patches"))
        );
    }

    private static void CheckRoles(BookBlock block, Report report)
    {
        var known = block.Roles.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < block.Patches.Length; i++)
        {
            if (!known.Contains(block.Patches[i].Role))
            {
                report.Fault("quilt.role.unknown", $"/patches/{i}/role", ("role", block.Patches[i].Role));
            }
        }
    }
}
