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

        if (IsTooDeep(text))
        {
            report.Fault("quilt.deep", "", ("most", QuiltLimits.Depth));
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

    private static bool IsTooDeep(string text)
    {
        var depth = 0;
        var inText = false;
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '"':
                    inText = !inText;
                    break;
                case '\\' when inText:
                    i++;
                    break;
                case '[' or '{' when !inText && ++depth > QuiltLimits.Depth:
                    return true;
                case ']' or '}' when !inText:
                    depth--;
                    break;
            }
        }

        return false;
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
