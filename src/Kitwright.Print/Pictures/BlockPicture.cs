using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;
using Kitwright.Print.Text;

namespace Kitwright.Print.Pictures;

/// <summary>One block, each patch by itself with its id, so that it can be touched and named.</summary>
public static class BlockPicture
{
    /// <summary>In inches, y down.</summary>
    public static Group Of(BlockDesign block, Func<string, Paint> fill, Stroke? seams) =>
        new([.. block.Patches.Select(patch => PatchShape(patch, fill, seams))])
        {
            Transform = QuiltPicture.Upright(block.Height),
            Id = new($"block/{block.Id}"),
            Class = "block",
        };

    /// <summary>At a size on paper, in points, with the letter of its fabric on each patch that has room for it.</summary>
    public static Group Lettered(BlockDesign block, Func<string, Paint> fill, Func<string, string> letter, double width)
    {
        var scale = width / block.Width.InInches.ToDouble();
        var patches = new Group([Of(block, fill, Look.Seam)]) { Transform = Affine.Scale(scale, scale) };
        var upright = QuiltPicture.Upright(block.Height).Then(Affine.Scale(scale, scale));
        return new([patches, .. block.Patches.SelectMany(patch => PatchLetter(patch, letter, upright))]);
    }

    /// <summary>For a screen: <c>viewBox</c> in inches, one path per patch with its <c>data-id</c>.</summary>
    public static string Svg(BlockDesign block, Func<string, Paint> fill, string label, string keyPrefix = "") =>
        SvgCanvas.Write(
            Of(block, fill, Look.Seam),
            new(new(0, 0, block.Width.InInches.ToDouble(), block.Height.InInches.ToDouble()), label, keyPrefix, Digits: 4, Hairlines: true)
        );

    internal static Shape PatchShape(Patch patch, Func<string, Paint> fill, Stroke? seams) =>
        new(Outline.Of(patch.Drawn), fill(patch.Role), seams) { Id = patch.Id, FabricRole = patch.Role, Class = "fabric" };

    private static IEnumerable<Node> PatchLetter(Patch patch, Func<string, string> letter, Affine toPage)
    {
        var shape = Outline.Of(patch.Drawn).Moved(toPage);
        var chip = Chip.Of(letter(patch.Role), Look.Label, Middle.Of(shape));
        var room = shape.Bounds();
        return chip.Box.Width < room.Width && chip.Box.Height < room.Height ? [chip.Drawing] : [];
    }
}
