using Kitwright.Geometry;
using Kitwright.Pressing;

namespace Kitwright.Sewing;

/// <summary>An arc of a template's line as chords.</summary>
internal static class ArcChords
{
    /// <summary>The places between the ends, without them.</summary>
    public static IEnumerable<Spot> Between(Spot from, Spot to, Spot center, bool clockwise) =>
        ArcPoints.Between((from.X, from.Y), (to.X, to.Y), (center.X, center.Y), clockwise).Select(p => new Spot(p.X, p.Y));
}
