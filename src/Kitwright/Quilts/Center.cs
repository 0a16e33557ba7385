using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>An upright rectangle of the quilt, in inches from its lower left corner.</summary>
internal readonly record struct Frame(Length Left, Length Bottom, Length Right, Length Top)
{
    public Length Width => Right - Left;
    public Length Height => Top - Bottom;

    public Frame Grown(Length by) => new(Left - by, Bottom - by, Right + by, Top + by);

    public Polygon Polygon() => Geometry.Polygon.Rectangle(Left, Bottom, Right, Top);
}

/// <summary>What lies inside the borders: blocks, and the patches between and beside them.</summary>
internal sealed record Center(Frame Shape, ImmutableArray<Placement> Placements, ImmutableArray<Patch> Patches);
