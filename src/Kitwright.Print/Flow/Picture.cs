using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>A drawing of a fixed size; never broken and never cut off.</summary>
/// <param name="Drawing">From the origin to (Width, Height), in points.</param>
public sealed record Picture(Node Drawing, double Width, double Height) : Element
{
    /// <summary>Where it stands in a wider space.</summary>
    public HorizontalPlace Horizontal { get; init; }

    public override Fit Lay(Space space) =>
        !space.Holds(Height) || Width > space.Width + 0.001
            ? new Refused($"a picture {Width:0.#} pt wide in {space.Width:0.#} pt", Height, space.Height)
            : new Whole(Height, Group.At(Horizontal.Offset(Width, space.Width), 0, Drawing));
}

/// <summary>Empty space; it vanishes at the head of a page.</summary>
public sealed record Blank(double Height) : Element
{
    public override Fit Lay(Space space) => new Whole(Math.Min(Height, Math.Max(0, space.Height)), new Group([]));
}

public enum HorizontalPlace
{
    Left,
    Center,
    Right,
}

internal static class HorizontalPlaces
{
    /// <summary>How far from the left something of a width begins.</summary>
    public static double Offset(this HorizontalPlace place, double width, double space) =>
        place switch
        {
            HorizontalPlace.Center => (space - width) / 2,
            HorizontalPlace.Right => space - width,
            _ => 0,
        };
}
