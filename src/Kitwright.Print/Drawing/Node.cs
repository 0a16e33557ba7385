using System.Collections.Immutable;
using Kitwright.Plans;
using Kitwright.Print.Text;

namespace Kitwright.Print.Drawing;

/// <summary>
/// One drawing for screen and paper: a tree of groups, shapes and lines of text. Canvases write it as SVG or PDF.
/// Lengths are points on paper and user units on screen, y down.
/// </summary>
public abstract record Node
{
    /// <summary>The item that it shows; empty where it shows none.</summary>
    public PathId Id { get; init; }

    /// <summary>What it is to somebody who does not see it; null where the group around it has said so.</summary>
    public Role? Role { get; init; }

    /// <summary>Names for style sheets and for finding it on a screen; null for none.</summary>
    public string? Class { get; init; }
}

/// <summary>Nodes in the order of painting.</summary>
public sealed record Group(ImmutableArray<Node> Nodes) : Node
{
    public Affine Transform { get; init; } = Affine.Identity;

    public static Group At(double x, double y, params ImmutableArray<Node> nodes) =>
        new(nodes) { Transform = Affine.Shift(x, y) };
}

/// <summary>Something filled or stroked. Stroke widths are not scaled by the groups around it.</summary>
public sealed record Shape(Outline Outline, Paint? Fill, Stroke? Stroke) : Node
{
    /// <summary>The role whose fabric fills it, for changing fabrics on the screen.</summary>
    public string? FabricRole { get; init; }
}

/// <summary>A line of text that begins at a place on its baseline. Text is moved by the groups around it, not scaled.</summary>
public sealed record TextLine(SetText Text, Place Start) : Node;

/// <summary>A stroke in points.</summary>
/// <param name="Dash">Length of dashes and gaps; null for a full line.</param>
public sealed record Stroke(Color Ink, double Width, double? Dash = null);
