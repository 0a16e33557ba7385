namespace Kitwright.Print.Drawing;

/// <summary>A place on the drawing, y down. For drawing only: no measure is ever read from it.</summary>
public readonly record struct Place(double X, double Y)
{
    public static Place operator +(Place p, Place q) => new(p.X + q.X, p.Y + q.Y);

    public static Place operator -(Place p, Place q) => new(p.X - q.X, p.Y - q.Y);

    public static Place operator *(Place p, double factor) => new(p.X * factor, p.Y * factor);
}

/// <summary>An upright rectangle, y down.</summary>
public readonly record struct Box(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;
    public double Bottom => Top + Height;
    public Place Center => new(Left + (Width / 2), Top + (Height / 2));

    public bool Meets(Box other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public Box Grown(double by) => new(Left - by, Top - by, Width + (2 * by), Height + (2 * by));
}

/// <summary>x' = A·x + C·y + E, y' = B·x + D·y + F.</summary>
public readonly record struct Affine(double A, double B, double C, double D, double E, double F)
{
    public static Affine Identity { get; } = new(1, 0, 0, 1, 0, 0);

    public static Affine Shift(double dx, double dy) => new(1, 0, 0, 1, dx, dy);

    public static Affine Scale(double sx, double sy) => new(sx, 0, 0, sy, 0, 0);

    public Place Apply(Place p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);

    /// <summary>This one first, and then the other.</summary>
    public Affine Then(Affine next)
    {
        var origin = next.Apply(new(E, F));
        return new(
            (next.A * A) + (next.C * B),
            (next.B * A) + (next.D * B),
            (next.A * C) + (next.C * D),
            (next.B * C) + (next.D * D),
            origin.X,
            origin.Y
        );
    }

    /// <summary>By how much lengths grow, where both axes grow alike.</summary>
    public double Factor => Math.Sqrt(Math.Abs((A * D) - (B * C)));
}
