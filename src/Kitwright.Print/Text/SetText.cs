using System.Collections.Immutable;
using Kitwright.Print.Fonts;

namespace Kitwright.Print.Text;

/// <summary>One character and the glyph that stands for it. Reading back gives the character.</summary>
public readonly record struct SetGlyph(int CodePoint, ushort Glyph);

/// <summary>Glyphs of one face that follow one another without a shift.</summary>
/// <param name="X">Where it begins, in points from the start of the text.</param>
public sealed record SetSpan(Face Face, string Text, ImmutableArray<SetGlyph> Glyphs, double X)
{
    /// <summary>The feature that gives all its figures their glyphs: <c>tnum</c>, <c>numr</c>, <c>dnom</c>, or none.</summary>
    public string? Feature { get; init; }

    public bool IsFraction => Feature is "numr" or "dnom";
}

/// <summary>A piece of text on one line, measured.</summary>
/// <param name="Width">In points.</param>
public sealed record SetText(string Text, TextStyle Style, ImmutableArray<SetSpan> Spans, double Width)
{
    public static SetText Of(string text, TextStyle style) => new TextSetter(style).Set(text);
}
