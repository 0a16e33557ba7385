using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>The quilt top as designed, in finished size: what the sewing must end with.</summary>
/// <param name="Width">Finished width in inches, across.</param>
/// <param name="Height">Finished height in inches; y runs up from the lower edge.</param>
/// <param name="Blocks">Each kind of block once, in its own coordinates with its lower left corner at the origin.</param>
/// <param name="Placements">Where each block lies.</param>
/// <param name="Patches">Patches that belong to no block: sashing, cornerstones, borders; in quilt coordinates.</param>
public sealed record Design(
    Length Width,
    Length Height,
    ImmutableArray<BlockDesign> Blocks,
    ImmutableArray<Placement> Placements,
    ImmutableArray<Patch> Patches
);

/// <summary>One kind of block: a rectangle filled exactly by its patches.</summary>
public sealed record BlockDesign(string Id, string Name, Length Width, Length Height, ImmutableArray<Patch> Patches);

/// <summary>One polygon of one fabric in finished size, corners counterclockwise, in inches.</summary>
/// <param name="Id"><c>block/star/patch/7</c>, or <c>frame/border/1/patch/2</c>.</param>
/// <param name="Role">What its fabric does.</param>
public sealed record Patch(PathId Id, string Role, Polygon Shape)
{
    /// <summary>
    /// The outline with its arcs as fine chords, where there are any: for pictures. A plan has no such patch, as curved
    /// seams are not planned.
    /// </summary>
    [JsonIgnore]
    public Polygon? Curved { get; init; }

    /// <summary>What a picture shows.</summary>
    [JsonIgnore]
    public Polygon Drawn => Curved ?? Shape;
}

/// <summary>One block of the quilt: <paramref name="Motion"/> takes block coordinates to quilt coordinates.</summary>
/// <param name="Id"><c>place/r3/c2</c>, rows counted from the top.</param>
public sealed record Placement(PathId Id, string Block, Motion Motion);
