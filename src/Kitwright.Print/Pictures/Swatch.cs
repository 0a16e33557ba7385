using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>A piece of a fabric at a fraction of its size, with its letter.</summary>
public static class Swatch
{
    /// <summary>Points to the inch of cloth: half size, so that a print shows its repeat.</summary>
    private const double Scale = 36;

    public static Group Of(string letter, Paint fabric, double width, double height)
    {
        var cloth = new Shape(Outline.Rectangle(new(0, 0, width / Scale, height / Scale)), fabric, Look.Edge);
        var chip = Chip.Of(letter, Look.Label, new(width / 2, height / 2));
        return new([new Group([cloth]) { Transform = Affine.Scale(Scale, Scale) }, chip.Drawing]);
    }
}
