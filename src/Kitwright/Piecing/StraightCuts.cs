using System.Collections.Immutable;
using Kitwright.Geometry;

namespace Kitwright.Piecing;

/// <summary>
/// Parallel straight seams that divide a region without crossing any item: found by a sweep over the items' extents
/// along the normal of a direction.
/// </summary>
/// <param name="Lines">One fewer than the parts; line i lies between part i and part i + 1, which is to its left.</param>
internal sealed record StraightCuts(ImmutableArray<Line> Lines, ImmutableArray<Region> Parts)
{
    private static readonly Point Right = new(1, 0);
    private static readonly Point Up = new(0, 1);

    /// <summary>
    /// The cuts to take first: level or upright ones before slanted ones, the direction with more seams before the
    /// other, rows before columns. Null where no straight seam divides the region.
    /// </summary>
    public static StraightCuts? Of(Region region)
    {
        var rows = Along(region, Right);
        var columns = Along(region, new Point(0, -1));
        if (rows is not null || columns is not null)
        {
            return (rows?.Lines.Length ?? 0) >= (columns?.Lines.Length ?? 0) ? rows : columns;
        }

        return SlantedSteps(region).Select(step => Along(region, step)).FirstOrDefault(cuts => cuts is not null);
    }

    private static IEnumerable<Point> SlantedSteps(Region region)
    {
        var seen = new HashSet<Surd>();
        foreach (var shape in region.Items.Select(item => item.Shape))
        {
            for (var i = 0; i < shape.Corners.Length; i++)
            {
                var step = shape.Corners[(i + 1) % shape.Corners.Length] - shape.Corners[i];
                if (step.X.IsZero || step.Y.IsZero)
                {
                    continue;
                }

                var slope = step.Y / step.X;
                if (seen.Add(slope))
                {
                    yield return new(1, slope);
                }
            }
        }
    }

    private static StraightCuts? Along(Region region, Point step)
    {
        var normal = new Point(-step.Y, step.X);
        var spans = region
            .Items.Select(item => (Item: item, Span: SpanOf(item.Shape, normal)))
            .OrderBy(x => x.Span.Low)
            .ToArray();
        var lines = ImmutableArray.CreateBuilder<Line>();
        var parts = ImmutableArray.CreateBuilder<Region>();
        var part = ImmutableArray.CreateBuilder<Item>();
        var reach = spans[0].Span.High;
        foreach (var (item, span) in spans)
        {
            if (part.Count > 0 && span.Low >= reach)
            {
                lines.Add(LineAt(step, normal, reach));
                parts.Add(new(part.ToImmutable()));
                part.Clear();
            }

            part.Add(item);
            reach = span.High > reach ? span.High : reach;
        }

        parts.Add(new(part.ToImmutable()));
        return lines.Count == 0 ? null : new(lines.ToImmutable(), parts.ToImmutable());
    }

    private static Line LineAt(Point step, Point normal, Surd level)
    {
        var from = normal * (level / Point.Dot(normal, normal));
        return new(from, from + step);
    }

    private static (Surd Low, Surd High) SpanOf(Polygon shape, Point normal)
    {
        var levels = shape.Corners.Select(c => Point.Dot(c, normal)).ToArray();
        return (levels.Min(), levels.Max());
    }
}
