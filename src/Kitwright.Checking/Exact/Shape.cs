using Kitwright.Geometry;

namespace Kitwright.Checking.Exact;

/// <summary>
/// A polygon with its corners counterclockwise, with what is worth keeping about it: area, half-planes, a box.
/// </summary>
internal sealed class Shape
{
    private readonly Point[] corners;
    private readonly Near[] nearX;
    private readonly Near[] nearY;
    private Surd? twiceArea;
    private HalfPlane[]? sides;

    public Shape(params Point[] corners)
    {
        this.corners = corners;
        nearX = Array.ConvertAll(corners, p => Exact.Near.Of(p.X));
        nearY = Array.ConvertAll(corners, p => Exact.Near.Of(p.Y));
        Left = nearX.Min(n => n.Low);
        Right = nearX.Max(n => n.High);
        Bottom = nearY.Min(n => n.Low);
        Top = nearY.Max(n => n.High);
    }

    public static Shape Rectangle(Surd left, Surd bottom, Surd right, Surd top) =>
        new(new(left, bottom), new(right, bottom), new(right, top), new(left, top));

    public int Count => corners.Length;
    public Point this[int i] => corners[i];

    public Point Next(int i) => corners[(i + 1) % corners.Length];

    public Near NearX(int i) => nearX[i];

    public Near NearY(int i) => nearY[i];

    /// <summary>A box in doubles that certainly holds the shape; for passing over what is far away.</summary>
    public double Left { get; }
    public double Right { get; }
    public double Bottom { get; }
    public double Top { get; }

    public bool IsApartFrom(Shape other) =>
        Right < other.Left || other.Right < Left || Top < other.Bottom || other.Top < Bottom;

    /// <summary>Twice the area; positive for counterclockwise corners.</summary>
    public Surd TwiceArea => twiceArea ??= SumOfCrosses();

    private Surd SumOfCrosses()
    {
        // Relative to the first corner, which keeps the numbers small.
        var sum = Surd.Zero;
        for (var i = 1; i + 1 < corners.Length; i++)
        {
            Surd px = corners[i].X - corners[0].X,
                py = corners[i].Y - corners[0].Y,
                qx = corners[i + 1].X - corners[0].X,
                qy = corners[i + 1].Y - corners[0].Y;
            sum += (px * qy) - (py * qx);
        }

        return sum;
    }

    public Shape Moved(Motion motion)
    {
        if (Rigid.IsStill(motion))
        {
            return this;
        }

        var moved = Array.ConvertAll(corners, motion.Apply);
        if (Rigid.Mirrors(motion))
        {
            Array.Reverse(moved);
        }

        return new(moved) { twiceArea = twiceArea };
    }

    /// <summary>
    /// What lies in a half-plane (Sutherland and Hodgman, "Reentrant polygon clipping", CACM 17(1), 1974); null where
    /// that has no area. Of a shape that is not convex the parts may hang together by edges of no width; the area is
    /// right nevertheless.
    /// </summary>
    public Shape? Within(HalfPlane half)
    {
        var sidesOf = new int[corners.Length];
        bool someIn = false,
            someOut = false;
        for (var i = 0; i < corners.Length; i++)
        {
            sidesOf[i] = half.SideOf(this, i);
            someIn |= sidesOf[i] > 0;
            someOut |= sidesOf[i] < 0;
        }

        if (!someIn)
        {
            return null;
        }

        if (!someOut)
        {
            return this;
        }

        var kept = new List<Point>(corners.Length + 2);
        for (var i = 0; i < corners.Length; i++)
        {
            var next = (i + 1) % corners.Length;
            if (sidesOf[i] >= 0)
            {
                kept.Add(corners[i]);
            }

            if (sidesOf[i] * sidesOf[next] < 0)
            {
                kept.Add(Crossing(half, corners[i], corners[next]));
            }
        }

        return new([.. kept]);
    }

    /// <summary>Where the step from p to q, which lie on different sides, meets the line.</summary>
    public static Point Crossing(HalfPlane half, Point p, Point q)
    {
        Surd atP = half.At(p),
            share = atP / (atP - half.At(q));
        var crossing = new Point(p.X + ((q.X - p.X) * share), p.Y + ((q.Y - p.Y) * share));
        Fineness.Check(crossing);
        return crossing;
    }

    /// <summary>What lies in a convex shape as well; null where that has no area.</summary>
    public Shape? Within(Shape convex)
    {
        if (ReferenceEquals(this, convex))
        {
            return this;
        }

        if (IsApartFrom(convex))
        {
            return null;
        }

        var rest = this;
        foreach (var side in convex.Sides)
        {
            rest = rest.Within(side);
            if (rest is null)
            {
                return null;
            }
        }

        return rest;
    }

    private HalfPlane[] Sides =>
        sides ??= [.. Enumerable.Range(0, corners.Length).Select(i => HalfPlane.LeftOf(new(corners[i], Next(i))))];
}
