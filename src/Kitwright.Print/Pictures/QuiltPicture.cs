using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;
using Kitwright.Print.Drawing;
using Kitwright.Print.Drawing.Svg;

namespace Kitwright.Print.Pictures;

/// <summary>
/// The whole quilt top in its fabrics, in inches, y down. One path per role and kind of block, and one per role of the
/// frame: changing a fabric changes a handful of paths, whatever the number of patches.
/// </summary>
public static class QuiltPicture
{
    /// <param name="fill">The fabric of a role.</param>
    /// <param name="seams">Drawn round every patch; null for none.</param>
    public static Group Of(Design design, Func<string, Paint> fill, Stroke? seams)
    {
        var groups = ImmutableArray.CreateBuilder<Node>();
        foreach (var block in design.Blocks)
        {
            var motions = design.Placements.Where(p => p.Block == block.Id).Select(p => p.Motion).ToArray();
            var patches = block.Patches.SelectMany(patch => motions.Select(motion => (patch.Role, patch.Drawn.Moved(motion))));
            groups.Add(Roles(patches, fill, seams) with { Id = new($"block/{block.Id}"), Class = "block" });
        }

        groups.Add(Roles(design.Patches.Select(p => (p.Role, p.Shape)), fill, seams) with { Id = new("frame"), Class = "frame" });
        return new(groups.ToImmutable()) { Transform = Upright(design.Height), Class = "quilt" };
    }

    /// <summary>The picture for a screen: <c>viewBox</c> in inches, fills as attributes of one path per role.</summary>
    /// <param name="label">What the picture shows, in words.</param>
    /// <param name="keyPrefix">Put before the ids of prints, where several pictures share a page.</param>
    public static string Svg(Design design, Func<string, Paint> fill, string label, string keyPrefix = "") =>
        SvgCanvas.Write(Of(design, fill, Look.Seam), View(design, label, keyPrefix));

    /// <summary>
    /// The same for a picture whose fabrics are changed by hand: all seams are one path over the fabrics, which a
    /// browser keeps painted while a fabric under them changes.
    /// </summary>
    public static string SvgUnderSeams(Design design, Func<string, Paint> fill, string label)
    {
        var blocks = design.Blocks.ToDictionary(block => block.Id, StringComparer.Ordinal);
        var patches = design.Placements.SelectMany(p => blocks[p.Block].Patches.Select(patch => patch.Drawn.Moved(p.Motion)));
        var seams = new Shape(Outline.Of(patches.Concat(design.Patches.Select(p => p.Shape))), null, Look.Seam) { Class = "seams" };
        return SvgCanvas.Write(
            new Group([Of(design, fill, null), new Group([seams]) { Transform = Upright(design.Height) }]),
            View(design, label, "")
        );
    }

    private static SvgView View(Design design, string label, string keyPrefix) =>
        new(new(0, 0, design.Width.InInches.ToDouble(), design.Height.InInches.ToDouble()), label, keyPrefix, Digits: 4, Hairlines: true);

    /// <summary>One shape per role.</summary>
    internal static Group Roles(IEnumerable<(string Role, Polygon Shape)> patches, Func<string, Paint> fill, Stroke? seams) =>
        new(
            [
                .. patches
                    .GroupBy(patch => patch.Role, patch => patch.Shape, StringComparer.Ordinal)
                    .Select(role => new Shape(Outline.Of(role), fill(role.Key), seams) { FabricRole = role.Key, Class = "fabric" }),
            ]
        );

    /// <summary>From y up, as quilts are measured, to y down, as pictures are drawn.</summary>
    internal static Affine Upright(Measure.Length height) => new(1, 0, 0, -1, 0, height.InInches.ToDouble());
}
