using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Kitwright.Quilts.Reading;

/// <summary>Text to JSON values, with the line and column of what is not JSON.</summary>
internal static class JsonText
{
    public static JsonDocument? Parse(string text, Report report)
    {
        if (text.Length > QuiltLimits.Text)
        {
            report.Fault("quilt.text.large", "", ("length", text.Length), ("most", QuiltLimits.Text));
            return null;
        }

        if (Scan(text, report))
        {
            return null;
        }

        try
        {
            // A byte order mark is no part of JSON, but many editors write one.
            return JsonDocument.Parse(text.AsMemory().TrimStart('\uFEFF'), new() { MaxDepth = QuiltLimits.Depth });
        }
        catch (JsonException broken)
        {
            var line = (int)(broken.LineNumber ?? 0);
            var column = Column(text, line, (int)(broken.BytePositionInLine ?? 0));
            report.Fault("quilt.json", $"line {line + 1}", ("line", line + 1), ("column", column + 1));
            return null;
        }
    }

    // What the parser answers with an exception of its own kind, or with none before it is asked for the text: too many
    // brackets, and halves of characters, written out or as an escape.
    private static bool Scan(string text, Report report)
    {
        int depth = 0,
            line = 1;
        var inText = false;
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '\n':
                    line++;
                    break;
                case '"':
                    inText = !inText;
                    break;
                case '\\' when inText && HalfEscape(text, ref i):
                case var c when char.IsSurrogate(c) && !IsPair(text, ref i):
                    report.Fault("quilt.character", $"line {line}", ("line", line));
                    return true;
                case '[' or '{' when !inText && ++depth > QuiltLimits.Depth:
                    report.Fault("quilt.deep", "", ("most", QuiltLimits.Depth));
                    return true;
                case ']' or '}' when !inText:
                    depth--;
                    break;
            }
        }

        return false;
    }

    private static bool IsPair(string text, ref int at)
    {
        if (at + 1 >= text.Length || !char.IsSurrogatePair(text[at], text[at + 1]))
        {
            return false;
        }

        at++;
        return true;
    }

    // Steps over an escape; true where it is half of a character whose other half does not follow.
    private static bool HalfEscape(string text, ref int at)
    {
        if (!IsUnit(text, at, out var unit) || !char.IsSurrogate(unit))
        {
            at++;
            return false;
        }

        if (!IsUnit(text, at + 6, out var next) || !char.IsSurrogatePair(unit, next))
        {
            return true;
        }

        at += 11;
        return false;
    }

    private static bool IsUnit(string text, int at, out char unit)
    {
        unit = default;
        if (at + 6 > text.Length || text[at] != '\\' || text[at + 1] != 'u')
        {
            return false;
        }

        var ok = ushort.TryParse(text.AsSpan(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value);
        unit = (char)value;
        return ok;
    }

    // The parser counts UTF-8 bytes; people count characters.
    private static int Column(string text, int line, int bytes)
    {
        var from = 0;
        for (var i = 0; i < line; i++)
        {
            from = text.IndexOf('\n', from) + 1;
        }

        var column = 0;
        foreach (var rune in text.AsSpan(from).EnumerateRunes())
        {
            if ((bytes -= rune.Utf8SequenceLength) < 0)
            {
                break;
            }

            column++;
        }

        return column;
    }
}
