using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.App.Features.Pictures;

/// <summary>Where every patch of a quilt top lies, as the picking module reads it.</summary>
public static class PickingData
{
    /// <summary>
    /// {height, blocks: {id: {outline: [x, y, …], patches: [[patch, x, y, …], …]}}, places: [[place, block, xx, xy, yx, yy, dx, dy], …], frame:
    /// [[patch, x, y, …], …]}, in inches, y up. For the eye only: no measure is read back from it.
    /// </summary>
    public static string Of(Design design) =>
        JsonSerializer.Serialize(
            new
            {
                height = design.Height.InInches.ToDouble(),
                blocks = design.Blocks.ToDictionary(block => block.Id, Parts),
                places = design.Placements.Select(place => (object[])[place.Id.Value, place.Block, .. Numbers(place.Motion)]),
                frame = design.Patches.Select(Flat),
            }
        );

    /// <summary>One block by itself, as if it were a quilt; its patches keep the path of the place they were touched at.</summary>
    public static string Of(BlockDesign block, PathId place) =>
        JsonSerializer.Serialize(
            new
            {
                height = block.Height.InInches.ToDouble(),
                blocks = new Dictionary<string, object> { [block.Id] = Parts(block) },
                places = (object[][])[[place.Value, block.Id, .. Numbers(Motion.Identity)]],
                frame = Array.Empty<object>(),
            }
        );

    private static object Parts(BlockDesign block) =>
        new
        {
            outline = Numbers(Polygon.Rectangle(0, 0, block.Width, block.Height)),
            patches = block.Patches.Select(Flat),
        };

    private static object[] Flat(Patch patch) => [patch.Id.Value, .. Numbers(patch.Drawn)];

    private static IEnumerable<object> Numbers(Polygon shape) =>
        shape.Corners.SelectMany(corner => Numbers(corner.X, corner.Y));

    private static IEnumerable<object> Numbers(Motion motion) =>
        Numbers(motion.XX, motion.XY, motion.YX, motion.YY, motion.DX, motion.DY);

    // A ten-thousandth of an inch is far below what a screen shows.
    private static IEnumerable<object> Numbers(params IEnumerable<Surd> values) =>
        values.Select(value => (object)Math.Round(value.ToDouble(), 4));
}
