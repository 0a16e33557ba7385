using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Quilts.Reading;

/// <summary>Blocks and their patches, within the limits on corners.</summary>
internal static class BlockReader
{
    public static ImmutableArray<Block> ReadAll(Node node)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        var corners = 0;
        foreach (var item in node.Items(1, QuiltLimits.Blocks))
        {
            var block = Read(item);
            corners += block.Patches.Sum(p => p.Corners.Length);
            if (corners > QuiltLimits.Corners)
            {
                node.Source.Report.Fault("quilt.corners", node.Pointer, ("most", QuiltLimits.Corners));
                break;
            }

            blocks.Add(block);
        }

        return blocks.ToImmutable();
    }

    private static Block Read(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("id").Id(),
            fields.Required("name").Text(),
            fields.Required("width").Size(),
            fields.Required("height").Size(),
            fields.Optional("grid") is { } grid ? ReadGrid(grid) : new(1, 1),
            ReadPatches(fields.Required("patches"))
        );
    }

    public static Grid ReadGrid(Node node)
    {
        using var fields = node.Fields();
        return new(fields.Required("columns").Whole(1, 1_000), fields.Required("rows").Whole(1, 1_000));
    }

    public static ImmutableArray<BlockPatch> ReadPatches(Node node)
    {
        var patches = ImmutableArray.CreateBuilder<BlockPatch>();
        var corners = 0;
        foreach (var item in node.Items(1, QuiltLimits.PatchesOfBlock))
        {
            var patch = ReadPatch(item);
            corners += patch.Corners.Length;
            if (corners > QuiltLimits.CornersOfBlock)
            {
                node.Source.Report.Fault("quilt.corners", node.Pointer, ("most", QuiltLimits.CornersOfBlock));
                break;
            }

            patches.Add(patch);
        }

        return patches.ToImmutable();
    }

    private static BlockPatch ReadPatch(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("id").Id(),
            fields.Required("role").Id(),
            [.. fields.Required("corners").Items(2, QuiltLimits.CornersOfPatch).Select(ReadPoint)],
            [.. fields.Optional("arcs")?.Items(0, QuiltLimits.CornersOfPatch).Select(ReadArc) ?? []]
        );
    }

    private static Arc ReadArc(Node node)
    {
        using var fields = node.Fields();
        return new(
            fields.Required("edge").Whole(0, QuiltLimits.CornersOfPatch - 1),
            ReadPoint(fields.Required("center")),
            fields.Optional("clockwise")?.Flag() ?? false
        );
    }

    private static Point ReadPoint(Node node)
    {
        Surd[] pair = [.. node.Items(2, 2).Select(item => item.Coordinate())];
        return pair.Length == 2 ? new(pair[0], pair[1]) : Point.Origin;
    }
}
