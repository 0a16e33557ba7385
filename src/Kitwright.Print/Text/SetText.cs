using System.Collections.Immutable;
using Kitwright.Print.Fonts;

namespace Kitwright.Print.Text;

/// <summary>One character and the glyph that stands for it. Reading back gives the character.</summary>
public readonly record struct SetGlyph(int CodePoint, ushort Glyph);

/// <summary>Glyphs of one face that follow one another without a shift.</summary>
/// <param name="X">Where it begins, in points from the start of the text.</param>
public sealed record SetSpan(Face Face, string Text, ImmutableArray<SetGlyph> Glyphs, double X)
{
    /// <summary>A fraction's figures: numerator and denominator are small glyphs of their own.</summary>
    public bool Fraction { get; init; }
}

/// <summary>A piece of text on one line, measured.</summary>
/// <param name="Width">In points.</param>
public sealed record SetText(string Text, TextStyle Style, ImmutableArray<SetSpan> Spans, double Width)
{
    public static SetText Of(string text, TextStyle style) => new TextSetter(style).Set(text);
}
