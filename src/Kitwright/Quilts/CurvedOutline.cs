using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>A patch's outline with its arcs as fine chords: for pictures, never for a measure.</summary>
internal static class CurvedOutline
{
    /// <summary>A millionth of an inch.</summary>
    private const int Parts = 1_000_000;

    /// <summary>Counterclockwise; null where every edge is straight.</summary>
    public static Polygon? Of(BlockPatch patch)
    {
        if (patch.Arcs.IsEmpty)
        {
            return null;
        }

        var corners = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < patch.Corners.Length; i++)
        {
            Point from = patch.Corners[i],
                to = patch.Corners[(i + 1) % patch.Corners.Length];
            corners.Add(from);
            if (patch.Arcs.FirstOrDefault(a => a.Edge == i) is { } arc)
            {
                corners.AddRange(ArcPoints.Between(InInches(from), InInches(to), InInches(arc.Center), arc.Clockwise).Select(Near));
            }
        }

        return new Polygon(corners.ToImmutable()).CounterClockwise();
    }

    private static (double X, double Y) InInches(Point point) => (point.X.ToDouble(), point.Y.ToDouble());

    private static Point Near((double X, double Y) place) => new(Near(place.X), Near(place.Y));

    private static Rational Near(double inches) => new((long)Math.Round(inches * Parts), Parts);
}
