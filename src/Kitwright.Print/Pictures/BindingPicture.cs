using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;

namespace Kitwright.Print.Pictures;

/// <summary>Two binding strips laid across each other for a diagonal join: where to sew, and where to trim.</summary>
public static class BindingPicture
{
    private const double Width = 34;
    private const double Arm = 74;
    private const double Allowance = 9;

    public static Picture Of(Paint fabric)
    {
        var size = Arm + Width;
        // The upright strip lies on top, face down.
        var level = new Shape(Outline.Rectangle(new(0, 0, size, Width)), fabric, Look.Edge);
        var upright = new Shape(Outline.Rectangle(new(Arm, 0, Width, size)), Paint.Of(Look.Wash), Look.Edge);
        var sewn = Outline.Line(new(Arm, 0), new(size, Width));
        var trimmed = Outline.Line(new(Arm + Allowance, 0), new(size, Width - Allowance));
        return new(
            new Group(
                [
                    level,
                    upright,
                    new Shape(sewn, null, new(Look.Ink, 1, 3)),
                    new Shape(trimmed, null, new(Look.Accent, 0.8)),
                ]
            ),
            size,
            size
        );
    }
}
