using Kitwright.Print.Drawing;

namespace Kitwright.Print.Pictures;

/// <summary>The mark of a place at which seams meet that cannot nest: a hollow diamond, seen on any fabric.</summary>
internal static class Diamond
{
    private const double Half = 4.4;

    /// <param name="middle">In points.</param>
    public static Shape At(Place middle) =>
        new(
            Outline.Polygon([middle + new Place(Half, 0), middle + new Place(0, Half), middle + new Place(-Half, 0), middle + new Place(0, -Half)]),
            Paint.Of(Look.Paper),
            new(Look.Ink, 1.3)
        )
        {
            Class = "unnested",
        };
}
