using System.Text;

namespace Kitwright.Print.Fonts;

/// <summary>
/// The PDF library embeds one glyph per code point and font name. Where a feature gives a figure another glyph, that
/// glyph comes from the same file under another name: a face of its own, which is subset like any other.
/// </summary>
internal static class FeatureFaces
{
    public static string NameOf(Face face, string? feature) => feature is null ? face.Name : $"{face.Name}.{feature}";

    /// <summary>The bytes behind such a name; null where it names none of our faces.</summary>
    public static byte[]? Bytes(string name)
    {
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        var face = Face.All.FirstOrDefault(f => f.Name == (dot < 0 ? name : name[..dot]));
        return face is null || dot < 0 ? face?.File.Bytes : Renamed(face.File.Bytes, name[(dot + 1)..]);
    }

    // Every letter of the names becomes another of the same length, so no offset moves. Names are UTF-16.
    private static byte[] Renamed(byte[] file, string feature)
    {
        var bytes = (byte[])file.Clone();
        var names = FontTable.Place(bytes, "name");
        byte[] old = Encoding.BigEndianUnicode.GetBytes("Inter"),
            renamed = Encoding.BigEndianUnicode.GetBytes($"I{feature}");
        for (var at = names.Start.Value; at + old.Length <= names.End.Value; at++)
        {
            if (bytes.AsSpan(at, old.Length).SequenceEqual(old))
            {
                renamed.CopyTo(bytes, at);
            }
        }

        return bytes;
    }
}
