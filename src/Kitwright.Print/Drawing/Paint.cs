using System.Collections.Immutable;

namespace Kitwright.Print.Drawing;

/// <summary>What fills a shape.</summary>
public abstract record Paint
{
    public static Paint Of(Color color) => new FlatPaint(color);
}

public sealed record FlatPaint(Color Color) : Paint;

/// <summary>A printed fabric: a ground and a motif that repeats both ways from the drawing's own origin.</summary>
/// <param name="Key">Unique to the fabric within a drawing; letters, figures and hyphens.</param>
/// <param name="Width">Of one repeat, in inches of cloth.</param>
/// <param name="Height">Of one repeat, in inches of cloth.</param>
/// <param name="Motif">Flat shapes within one repeat, in inches, y down; what sticks out is cut off.</param>
public sealed record TilePaint(string Key, Color Ground, double Width, double Height, ImmutableArray<Shape> Motif) : Paint;

/// <summary>
/// A fabric that the web page around the drawing defines under a name, so that a screen changes it without drawing
/// again. For SVG only: paper has no such page, and leaves the shape bare.
/// </summary>
/// <param name="Name">The id of an SVG paint server on the same page.</param>
public sealed record NamedPaint(string Name, Color Fallback) : Paint;
