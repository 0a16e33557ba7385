using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Plans;

namespace Kitwright.Piecing;

/// <summary>The hand of a shape, and names by which equal shapes and mirror images find each other however they lie.</summary>
/// <param name="Shape">Equal for shapes that one turn brings to cover each other.</param>
/// <param name="Mirrored">The <see cref="Shape"/> of the mirror image.</param>
internal readonly record struct Handedness(Hand Hand, string Shape, string Mirrored)
{
    /// <param name="shape">Counterclockwise.</param>
    public static Handedness Of(Polygon shape)
    {
        var own = First(shape);
        var mirror = First(shape.Moved(Motion.Reflect(new(new(0, 0), new(0, 1)))).CounterClockwise());
        return new(
            Compare(own, mirror) switch { < 0 => Hand.Left, > 0 => Hand.Right, _ => Hand.Either },
            string.Join(';', own),
            string.Join(';', mirror)
        );
    }

    /// <summary>Squared length of each side and its product with the next, from the side on which the list comes first.</summary>
    private static ImmutableArray<(Surd Square, Surd Product)> First(Polygon shape)
    {
        var corners = shape.Corners;
        var sides = corners.Select((corner, i) => corners[(i + 1) % corners.Length] - corner).ToArray();
        var round = sides.Select((side, i) => (Point.Dot(side, side), Point.Dot(side, sides[(i + 1) % sides.Length]))).ToImmutableArray();
        return Enumerable.Range(0, round.Length).Select(from => round[from..].AddRange(round[..from])).Aggregate((x, y) => Compare(x, y) <= 0 ? x : y);
    }

    private static int Compare(ImmutableArray<(Surd Square, Surd Product)> x, ImmutableArray<(Surd Square, Surd Product)> y)
    {
        for (var i = 0; i < x.Length; i++)
        {
            var order = x[i].CompareTo(y[i]);
            if (order != 0)
            {
                return order;
            }
        }

        return 0;
    }
}
