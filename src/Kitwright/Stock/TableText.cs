using System.Collections.Immutable;
using System.Text;
using System.Text.Unicode;
using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>Which encoding and which separator a file of text uses.</summary>
/// <remarks>
/// A byte order mark decides; without one, zero bytes tell UTF-16, and bytes that are no UTF-8 are taken as
/// Windows-1252, which gives every byte a meaning. The separator is the one of comma, semicolon and tab that stands
/// most often in the first line outside of quotes.
/// </remarks>
internal static class TableText
{
    private static readonly ImmutableArray<char> Separators = [',', ';', '\t'];

    /// <summary>The first bytes of a stream, at most one more than may be read.</summary>
    public static byte[] Bounded(Stream stream)
    {
        var held = new MemoryStream();
        var buffer = new byte[81_920];
        int count;
        while (held.Length <= TableLimits.Bytes && (count = stream.Read(buffer, 0, buffer.Length)) > 0)
        {
            held.Write(buffer, 0, count);
        }

        return held.ToArray();
    }

    public static Finding? TooBig(byte[] bytes) =>
        bytes.Length > TableLimits.Bytes
            ? Finding.Of("stock.too-big", "file", ("limit", TableLimits.Bytes / 1024 / 1024))
            : null;

    public static Encoding EncodingOf(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith<byte>([0xFF, 0xFE]))
        {
            return Encoding.Unicode;
        }

        if (bytes.StartsWith<byte>([0xFE, 0xFF]))
        {
            return Encoding.BigEndianUnicode;
        }

        var head = bytes[..Math.Min(bytes.Length, 64)];
        if (head.Contains((byte)0))
        {
            return head[0] == 0 ? Encoding.BigEndianUnicode : Encoding.Unicode;
        }

        return Utf8.IsValid(bytes) ? Encoding.UTF8 : CodePagesEncodingProvider.Instance.GetEncoding(1252)!;
    }

    public static StreamReader Open(byte[] bytes) =>
        new(new MemoryStream(bytes), EncodingOf(bytes), detectEncodingFromByteOrderMarks: true);

    public static char SeparatorOf(byte[] bytes)
    {
        using var text = Open(bytes);
        var counts = new int[Separators.Length];
        var quoted = false;
        for (int next; (next = text.Read()) >= 0 && (quoted || next is not ('\r' or '\n'));)
        {
            quoted ^= next == '"';
            var which = quoted ? -1 : Separators.IndexOf((char)next);
            if (which >= 0)
            {
                counts[which]++;
            }
        }

        return Separators[Array.IndexOf(counts, counts.Max())];
    }
}
