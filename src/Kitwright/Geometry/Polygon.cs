using System.Collections.Immutable;

namespace Kitwright.Geometry;

/// <summary>Where a point lies against a closed region.</summary>
public enum Side
{
    Outside,
    On,
    Inside,
}

/// <summary>A simple polygon by its corners in order, without a repeated last corner.</summary>
public sealed record Polygon(ImmutableArray<Point> Corners)
{
    public static Polygon Rectangle(Surd left, Surd bottom, Surd right, Surd top) =>
        new([new(left, bottom), new(right, bottom), new(right, top), new(left, top)]);

    /// <summary>Twice the area; positive where the corners run counterclockwise.</summary>
    public Surd TwiceSignedArea
    {
        get
        {
            var sum = Surd.Zero;
            for (var i = 0; i < Corners.Length; i++)
            {
                sum += Point.Cross(Corners[i], Corners[(i + 1) % Corners.Length]);
            }

            return sum;
        }
    }

    public Polygon Moved(Motion motion)
    {
        var moved = Corners.Select(motion.Apply);
        // A mirror turns the sense of rotation; keep counterclockwise counterclockwise.
        return new(motion.Mirrors ? [.. moved.Reverse()] : [.. moved]);
    }

    public Polygon CounterClockwise() =>
        TwiceSignedArea.Sign < 0 ? new([.. Corners.Reverse()]) : this;

    // Asked again and again while a quilt is pieced: kept with the corners that it was worked out from.
    private Box? box;

    private sealed record Box(ImmutableArray<Point> Of, Point Low, Point High);

    public (Point Low, Point High) Bounds()
    {
        if (box is not { } known || known.Of != Corners)
        {
            box = known = BoxOf(Corners);
        }

        return (known.Low, known.High);
    }

    private static Box BoxOf(ImmutableArray<Point> corners)
    {
        Surd left = corners[0].X,
            right = left,
            bottom = corners[0].Y,
            top = bottom;
        foreach (var corner in corners.AsSpan()[1..])
        {
            left = corner.X < left ? corner.X : left;
            right = corner.X > right ? corner.X : right;
            bottom = corner.Y < bottom ? corner.Y : bottom;
            top = corner.Y > top ? corner.Y : top;
        }

        return new(corners, new(left, bottom), new(right, top));
    }

    /// <summary>Exact answer by crossing count; a point on the edge is On.</summary>
    public Side Where(Point point)
    {
        var inside = false;
        for (var i = 0; i < Corners.Length; i++)
        {
            Point p = Corners[i],
                q = Corners[(i + 1) % Corners.Length];
            bool pAbove = p.Y > point.Y,
                qAbove = q.Y > point.Y;
            if (pAbove && qAbove || p.Y < point.Y && q.Y < point.Y)
            {
                continue;
            }

            var turn = Point.Cross(q - p, point - p).Sign;
            if (turn == 0 && Point.Dot(p - point, q - point).Sign <= 0)
            {
                return Side.On;
            }

            if (pAbove != qAbove && (qAbove ? turn > 0 : turn < 0))
            {
                inside = !inside;
            }
        }

        return inside ? Side.Inside : Side.Outside;
    }

    public bool Equals(Polygon? other) => other is not null && Corners.SequenceEqual(other.Corners);

    public override int GetHashCode() =>
        Corners.Aggregate(0, (hash, corner) => HashCode.Combine(hash, corner));
}
