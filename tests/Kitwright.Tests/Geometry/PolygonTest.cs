using System.Collections.Immutable;
using CsCheck;
using Kitwright.Geometry;
using Kitwright.Measure;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using Xunit;
using Point = Kitwright.Geometry.Point;
using Polygon = Kitwright.Geometry.Polygon;

namespace Kitwright.Tests.Geometry;

public sealed class PolygonTest
{
    /// <summary>Simple polygons with corners on a grid of quarters: a star about the origin, sorted by direction.</summary>
    private static readonly Gen<Polygon> Simple = Gen.Select(Gen.Int[-20, 20], Gen.Int[-20, 20])
        .List[3, 12]
        .Select(list =>
            list.Where(p => p != (0, 0))
                .GroupBy(p => Math.Atan2(p.Item2, p.Item1))
                .OrderBy(g => g.Key)
                .Select(g => g.First())
                .Select(p => new Point(new Rational(p.Item1, 4), new Rational(p.Item2, 4)))
                .ToImmutableArray()
        )
        .Where(corners => corners.Length >= 3 && Turns(corners))
        .Select(corners => new Polygon(corners));

    // Neighbors less than half a turn apart: then the star is simple and holds the origin.
    private static bool Turns(ImmutableArray<Point> corners) =>
        Enumerable.Range(0, corners.Length).All(i => Point.Cross(corners[i], corners[(i + 1) % corners.Length]).Sign > 0);

    private static readonly Gen<Point> Grid = Gen.Select(Gen.Int[-24, 24], Gen.Int[-24, 24], (x, y) => new Point(new Rational(x, 4), new Rational(y, 4)));

    [Fact]
    public void Area_and_sides_stay_under_every_motion() =>
        Gen.Select(Simple, Generate.Motions, Grid)
            .Sample(
                (polygon, motion, point) =>
                {
                    var moved = polygon.Moved(motion);
                    Assert.Equal(polygon.TwiceSignedArea, moved.TwiceSignedArea);
                    Assert.Equal(polygon.Where(point), moved.Where(motion.Apply(point)));
                }
            );

    // NetTopologySuite 2.6 as reference: quarters are exact in its doubles, so its answer on them is exact too.
    [Fact]
    public void Where_agrees_with_a_reference_library() =>
        Gen.Select(Simple, Grid)
            .Sample(
                (polygon, point) =>
                {
                    var ring = polygon.Corners.Append(polygon.Corners[0]).Select(Of).ToArray();
                    var locator = new IndexedPointInAreaLocator(new GeometryFactory().CreatePolygon(ring));
                    var expected = locator.Locate(Of(point)) switch
                    {
                        Location.Interior => Side.Inside,
                        Location.Boundary => Side.On,
                        _ => Side.Outside,
                    };
                    Assert.Equal(expected, polygon.Where(point));
                }
            );

    [Fact]
    public void Area_agrees_with_a_reference_library() =>
        Simple.Sample(polygon =>
        {
            var ring = polygon.Corners.Append(polygon.Corners[0]).Select(Of).ToArray();
            Assert.Equal(2 * new GeometryFactory().CreatePolygon(ring).Area, polygon.TwiceSignedArea.ToDouble());
        });

    [Fact]
    public void Corners_and_points_along_the_edges_are_on_it() =>
        Gen.Select(Simple, Gen.Int[0, 7], Generate.Motions)
            .Sample(
                (polygon, eighths, motion) =>
                {
                    var moved = polygon.Moved(motion);
                    for (var i = 0; i < moved.Corners.Length; i++)
                    {
                        Point p = moved.Corners[i],
                            q = moved.Corners[(i + 1) % moved.Corners.Length];
                        Assert.Equal(Side.On, moved.Where(p + ((q - p) * new Rational(eighths, 8))));
                    }
                }
            );

    [Fact]
    public void A_hair_beside_an_edge_is_not_on_it()
    {
        var diamond = Polygon.Rectangle(-1, -1, 1, 1).Moved(Motion.EighthTurns(1));
        Surd hair = new Rational(1, 1_000_000_000_000_000_000);
        var middle = Surd.OfRoot2(new(1, 2));
        Assert.Equal(Side.On, diamond.Where(new(middle, middle)));
        Assert.Equal(Side.Inside, diamond.Where(new(middle - hair, middle)));
        Assert.Equal(Side.Outside, diamond.Where(new(middle + hair, middle)));
    }

    [Fact]
    public void A_slot_is_outside()
    {
        // A U, entered from above.
        Polygon u = new([new(0, 0), new(6, 0), new(6, 5), new(4, 5), new(4, 2), new(2, 2), new(2, 5), new(0, 5)]);
        Assert.Equal(Side.Outside, u.Where(new(3, 4)));
        Assert.Equal(Side.Inside, u.Where(new(1, 4)));
        Assert.Equal(Side.Inside, u.Where(new(5, 2)));
        Assert.Equal(Side.On, u.Where(new(3, 2)));
        Assert.Equal(Side.Outside, u.Where(new(3, 5)));
        Assert.Equal(2 * 24, u.TwiceSignedArea);
    }

    [Fact]
    public void Counterclockwise_turns_only_what_runs_the_other_way() =>
        Simple.Sample(polygon =>
        {
            Polygon clockwise = new([.. polygon.Corners.Reverse()]);
            Assert.Equal(-polygon.TwiceSignedArea, clockwise.TwiceSignedArea);
            Assert.Equal(polygon, clockwise.CounterClockwise());
            Assert.Equal(polygon, polygon.CounterClockwise());
        });

    [Fact]
    public void Bounds_hold_all_corners_and_touch_four() =>
        Gen.Select(Simple, Generate.Motions)
            .Sample(
                (polygon, motion) =>
                {
                    var moved = polygon.Moved(motion);
                    var (low, high) = moved.Bounds();
                    Assert.All(moved.Corners, p => Assert.True(low.X <= p.X && p.X <= high.X && low.Y <= p.Y && p.Y <= high.Y));
                    Assert.Contains(moved.Corners, p => p.X == low.X);
                    Assert.Contains(moved.Corners, p => p.X == high.X);
                    Assert.Contains(moved.Corners, p => p.Y == low.Y);
                    Assert.Contains(moved.Corners, p => p.Y == high.Y);
                }
            );

    [Fact]
    public void Equality_is_by_corners() =>
        Simple.Sample(polygon =>
        {
            Polygon again = new([.. polygon.Corners]);
            Assert.Equal(polygon, again);
            Assert.Equal(polygon.GetHashCode(), again.GetHashCode());
            Assert.NotEqual(polygon, new Polygon([.. polygon.Corners[1..], polygon.Corners[0]]));
        });

    private static Coordinate Of(Point p) => new(p.X.ToDouble(), p.Y.ToDouble());
}
