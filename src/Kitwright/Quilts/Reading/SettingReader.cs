using System.Collections.Immutable;
using System.Text.Json;

namespace Kitwright.Quilts.Reading;

/// <summary>How the blocks are laid, and the sashing between them.</summary>
internal static class SettingReader
{
    public static Setting Read(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("kind").OneOf<SettingKind>(),
            fields.Required("columns").Whole(1, QuiltLimits.CellsAcross),
            fields.Required("rows").Whole(1, QuiltLimits.CellsAcross),
            [.. fields.Required("cells").Items(1, QuiltLimits.CellsAcross).Select(ReadRow)],
            fields.Optional("sashing") is { } sashing ? ReadSashing(sashing) : null,
            fields.Optional("triangles")?.Id()
        )
        {
            HalfDrop = fields.Optional("halfDrop")?.Id(),
        };
    }

    private static ImmutableArray<Cell> ReadRow(Node node) =>
        [.. node.Items(1, QuiltLimits.CellsAcross).Select(ReadCell)];

    // A block that is neither turned nor mirrored is named by its id alone.
    private static Cell ReadCell(Node node)
    {
        if (node.Json.ValueKind == JsonValueKind.String)
        {
            return new(node.Id(), 0, false);
        }

        using var fields = node.Fields();
        return new(
            fields.Required("block").Id(),
            fields.Optional("turns")?.Whole(0, 3) ?? 0,
            fields.Optional("mirror")?.Flag() ?? false
        );
    }

    private static Sashing ReadSashing(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("width").Size(),
            fields.Required("role").Id(),
            fields.Optional("cornerstone")?.Id(),
            fields.Optional("outer")?.Flag() ?? false,
            fields.Optional("halved")?.Flag() ?? false
        )
        {
            Lines = fields.Optional("lines")?.OneOf<SashLines>() ?? SashLines.Both,
        };
    }
}
