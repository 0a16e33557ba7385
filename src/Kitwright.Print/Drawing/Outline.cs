using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Print.Drawing;

/// <summary>Lines and curves that are filled or stroked together.</summary>
public sealed record Outline(ImmutableArray<Contour> Contours)
{
    public static Outline Rectangle(Box box) =>
        Polygon([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)]);

    public static Outline Polygon(params ImmutableArray<Place> corners) =>
        new([new(corners[0], [.. corners.Skip(1).Select(Segment.Line)], Closed: true)]);

    public static Outline Line(Place from, Place to) => new([new(from, [Segment.Line(to)], Closed: false)]);

    public static Outline Lines(IEnumerable<(Place From, Place To)> lines) =>
        new([.. lines.Select(line => new Contour(line.From, [Segment.Line(line.To)], Closed: false))]);

    /// <summary>Exact corners in inches, y up; the drawing's transform turns them over.</summary>
    public static Outline Of(params IEnumerable<Polygon> polygons) =>
        new(
            [
                .. polygons.Select(polygon =>
                {
                    var places = polygon.Corners.Select(c => new Place(c.X.ToDouble(), c.Y.ToDouble())).ToArray();
                    return new Contour(places[0], [.. places.Skip(1).Select(Segment.Line)], Closed: true);
                }),
            ]
        );

    public static Outline Circle(Place center, double radius)
    {
        // Four cubics with control points at 0.5523 of the radius stay within 0.03 % of the circle.
        var k = 0.5522847498 * radius;
        Place At(double dx, double dy) => new(center.X + dx, center.Y + dy);
        return new(
            [
                new(
                    At(radius, 0),
                    [
                        new(At(radius, k), At(k, radius), At(0, radius), true),
                        new(At(-k, radius), At(-radius, k), At(-radius, 0), true),
                        new(At(-radius, -k), At(-k, -radius), At(0, -radius), true),
                        new(At(k, -radius), At(radius, -k), At(radius, 0), true),
                    ],
                    Closed: true
                ),
            ]
        );
    }

    public Outline Moved(Affine by) => new([.. Contours.Select(contour => contour.Moved(by))]);

    /// <summary>Whether a place lies within an odd number of contours, curves taken as their chords.</summary>
    public bool Holds(Place place)
    {
        var inside = false;
        foreach (var contour in Contours)
        {
            var from = contour.Segments[^1].To;
            foreach (var to in contour.Segments.Select(segment => segment.To).Prepend(contour.Start))
            {
                if (from.Y > place.Y != to.Y > place.Y && place.X < from.X + ((place.Y - from.Y) / (to.Y - from.Y) * (to.X - from.X)))
                {
                    inside = !inside;
                }

                from = to;
            }
        }

        return inside;
    }

    public Box Bounds()
    {
        double left = double.MaxValue,
            top = double.MaxValue,
            right = double.MinValue,
            bottom = double.MinValue;
        foreach (var place in Contours.SelectMany(contour => contour.Places))
        {
            left = Math.Min(left, place.X);
            top = Math.Min(top, place.Y);
            right = Math.Max(right, place.X);
            bottom = Math.Max(bottom, place.Y);
        }

        return new(left, top, right - left, bottom - top);
    }
}

/// <summary>One run of segments from a first place.</summary>
public sealed record Contour(Place Start, ImmutableArray<Segment> Segments, bool Closed)
{
    /// <summary>All ends and control points: a box that holds them holds the contour.</summary>
    public IEnumerable<Place> Places =>
        Segments.SelectMany(s => s.Curve ? new[] { s.First, s.Second, s.To } : [s.To]).Prepend(Start);

    public Contour Moved(Affine by) => new(by.Apply(Start), [.. Segments.Select(segment => segment.Moved(by))], Closed);
}

/// <summary>A straight line, or a cubic Bézier curve with two control points.</summary>
public readonly record struct Segment(Place First, Place Second, Place To, bool Curve)
{
    public static Segment Line(Place to) => new(to, to, to, false);

    public Segment Moved(Affine by) => new(by.Apply(First), by.Apply(Second), by.Apply(To), Curve);
}
