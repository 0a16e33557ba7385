using System.Buffers.Binary;

namespace Kitwright.Print.Fonts;

/// <summary>One table of a font file, or a part of one: big-endian numbers at byte offsets.</summary>
internal readonly record struct FontTable(ReadOnlyMemory<byte> Bytes)
{
    public ushort U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(Bytes.Span[at..]);

    public short I16(int at) => BinaryPrimitives.ReadInt16BigEndian(Bytes.Span[at..]);

    public int U32(int at) => checked((int)BinaryPrimitives.ReadUInt32BigEndian(Bytes.Span[at..]));

    public string Tag(int at) => System.Text.Encoding.ASCII.GetString(Bytes.Span.Slice(at, 4));

    /// <summary>The part that begins at an offset.</summary>
    public FontTable From(int at) => new(Bytes[at..]);

    /// <summary>The tables of a whole file by tag.</summary>
    public static Dictionary<string, FontTable> All(byte[] file) =>
        Places(file).ToDictionary(table => table.Tag, table => new FontTable(file.AsMemory(table.Bytes)), StringComparer.Ordinal);

    /// <summary>Where a table lies in the file.</summary>
    public static Range Place(byte[] file, string tag) => Places(file).First(table => table.Tag == tag).Bytes;

    private static IEnumerable<(string Tag, Range Bytes)> Places(byte[] file)
    {
        var whole = new FontTable(file);
        for (var i = 0; i < whole.U16(4); i++)
        {
            var record = 12 + (16 * i);
            var start = whole.U32(record + 8);
            yield return (whole.Tag(record), start..(start + whole.U32(record + 12)));
        }
    }
}
