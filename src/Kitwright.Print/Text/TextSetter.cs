using System.Collections.Immutable;
using System.Text;
using Kitwright.Print.Fonts;

namespace Kitwright.Print.Text;

/// <summary>
/// Sets one line of text: finds the face and glyph of each character, sets "7/8" as a fraction with small figures, and
/// draws it closer to the whole number before it.
/// </summary>
internal sealed class TextSetter(TextStyle style)
{
    // Ems. A full word space would tear "3 7/8" apart.
    private const double SpaceTakenBeforeFraction = 0.12;

    private readonly ImmutableArray<SetSpan>.Builder spans = ImmutableArray.CreateBuilder<SetSpan>();
    private readonly ImmutableArray<SetGlyph>.Builder glyphs = ImmutableArray.CreateBuilder<SetGlyph>();
    private Face face = style.Face;
    private string? feature;
    private double x;
    private double spanStart;

    public SetText Set(string text)
    {
        var at = 0;
        while (at < text.Length)
        {
            if (Measures.FractionAt(text, at) is { } slash)
            {
                var end = Measures.EndOfDigits(text, slash + 1);
                if (at >= 2 && text[at - 1] is ' ' or '\u00A0' && char.IsAsciiDigit(text[at - 2]))
                {
                    EndSpan();
                    x -= SpaceTakenBeforeFraction * style.Size;
                    spanStart = x;
                }

                Fraction(text.AsSpan(at, slash - at), text.AsSpan(slash + 1, end - slash - 1));
                at = end;
                continue;
            }

            Rune.DecodeFromUtf16(text.AsSpan(at), out var rune, out var used);
            Add(rune.Value, style.Tabular && char.IsAsciiDigit(text[at]) ? "tnum" : null);
            at += used;
        }

        EndSpan();
        return new(text, style, spans.ToImmutable(), x);
    }

    private void Fraction(ReadOnlySpan<char> over, ReadOnlySpan<char> under)
    {
        foreach (var digit in over)
        {
            Add(digit, "numr");
        }

        AddGlyph('/', style.Face.File.Glyph('⁄'));
        foreach (var digit in under)
        {
            Add(digit, "dnom");
        }
    }

    private void Add(int codePoint, string? wanted)
    {
        var wantedFace = style.Face.For(codePoint);
        if (wantedFace != face || wanted != feature)
        {
            EndSpan();
            (face, feature) = (wantedFace, wanted);
        }

        var glyph = face.File.Glyph(codePoint);
        AddGlyph(codePoint, feature is null ? glyph : face.File.Substitute(feature, glyph));
    }

    private void AddGlyph(int codePoint, ushort glyph)
    {
        glyphs.Add(new(codePoint, glyph));
        x += face.File.Advance(glyph) * style.Size;
    }

    private void EndSpan()
    {
        if (glyphs.Count > 0)
        {
            var text = string.Concat(glyphs.Select(glyph => new Rune(glyph.CodePoint).ToString()));
            spans.Add(new(face, text, glyphs.ToImmutable(), spanStart) { Feature = feature });
            glyphs.Clear();
        }

        spanStart = x;
    }
}
