using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.App.Features.Pictures;

/// <summary>A quilt top for the screen: one outline per role, and what picking by geometry needs.</summary>
public sealed class TopShapes
{
    // Shapes are the same as long as the design is; a design that nobody holds takes its shapes with it.
    private static readonly ConditionalWeakTable<Design, TopShapes> Known = [];

    private readonly Design design;
    private readonly ImmutableArray<(PathId Place, Patch Patch, Polygon Shape)> laid;
    private readonly Lazy<ImmutableArray<(string Role, string Path)>> byRole;
    private readonly Lazy<string> picking;

    private TopShapes(Design design)
    {
        this.design = design;
        laid = [.. Lay(design)];
        byRole = new(MakeByRole);
        picking = new(MakePicking);
    }

    public static TopShapes Of(Design design) => Known.GetValue(design, d => new(d));

    /// <summary>Role and path data, in inches from the upper left corner.</summary>
    public ImmutableArray<(string Role, string Path)> ByRole => byRole.Value;

    /// <summary>
    /// JSON for the picking module: [{place, patches: [[id, x, y, x, y, …], …]}, …], in inches from the upper left
    /// corner; the entry without a place holds what lies outside the blocks.
    /// </summary>
    public string Picking => picking.Value;

    public string PathOf(IReadOnlySet<PathId> patches) =>
        Outline.Path(laid.Where(l => patches.Contains(l.Patch.Id)).Select(l => l.Shape), design.Height);

    // Every patch of the top where it lies, with the place of its block.
    private static IEnumerable<(PathId Place, Patch Patch, Polygon Shape)> Lay(Design design)
    {
        var blocks = design.Blocks.ToDictionary(block => block.Id);
        foreach (var place in design.Placements)
        {
            foreach (var patch in blocks[place.Block].Patches)
            {
                yield return (place.Id, patch, patch.Shape.Moved(place.Motion));
            }
        }

        foreach (var patch in design.Patches)
        {
            yield return (default, patch, patch.Shape);
        }
    }

    private ImmutableArray<(string Role, string Path)> MakeByRole() =>
        [
            .. laid.GroupBy(l => l.Patch.Role)
                .Select(role => (role.Key, Outline.Path(role.Select(l => l.Shape), design.Height))),
        ];

    private string MakePicking() =>
        JsonSerializer.Serialize(
            laid.GroupBy(l => l.Place)
                .Select(place => new
                {
                    place = place.Key.Value,
                    patches = place.Select(l => (object[])[l.Patch.Id.Value, .. Flat(l.Shape)]),
                })
        );

    private IEnumerable<object> Flat(Polygon shape) =>
        shape
            .Corners.Select(corner => Outline.Down(corner, design.Height))
            .SelectMany(p => (object[])[Math.Round(p.X, 4), Math.Round(p.Y, 4)]);
}
