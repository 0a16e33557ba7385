using Kitwright.Print.Drawing;

namespace Kitwright.Print.Flow;

/// <summary>An element with space around it, on a ground or within a line; kept together.</summary>
public sealed record Frame(Element Content, double Padding) : Element
{
    public Paint? Ground { get; init; }
    public Stroke? Line { get; init; }

    /// <summary>The least height of the whole, in points.</summary>
    public double LeastHeight { get; init; }

    public override Fit Lay(Space space)
    {
        var inner = new Space(space.Width - (2 * Padding), space.Height - (2 * Padding));
        if (Content.Lay(inner) is not Whole whole)
        {
            return Content.Lay(inner.Endless) is Whole tall
                ? new Refused("a frame", tall.Height + (2 * Padding), space.Height)
                : new Refused("a frame", 2 * Padding, space.Height);
        }

        var height = Math.Max(LeastHeight, whole.Height + (2 * Padding));
        if (!space.Holds(height))
        {
            return new Refused("a frame", height, space.Height);
        }

        var back = new Shape(Outline.Rectangle(new(0, 0, space.Width, height)), Ground, Line) { Role = Role.Decoration };
        return new Whole(height, new Group([back, Group.At(Padding, Padding, whole.Drawing)]));
    }
}

/// <summary>An element that is not broken over two pages.</summary>
public sealed record Together(Element Content) : Element
{
    public override Fit Lay(Space space) =>
        Content.Lay(space) switch
        {
            Part => new Refused("something kept together", Least(space), space.Height),
            var fit => fit,
        };

    private double Least(Space space) => Content.Lay(space.Endless) is Whole whole ? whole.Height : 0;
}
