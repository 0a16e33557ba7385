namespace Kitwright.Print.Fonts;

/// <summary>The faces that everything is set in. All text is measured and drawn from these files.</summary>
public sealed class Face
{
    private Face(string family, string name, int weight)
    {
        Family = family;
        Name = name;
        Weight = weight;
        File = FontFile.Parse(Load(name));
    }

    public static Face Regular { get; } = new("Inter", "Inter-Regular", 400);
    public static Face SemiBold { get; } = new("Inter", "Inter-SemiBold", 600);

    /// <summary>For letters of a user's text that the other faces lack.</summary>
    public static Face Fallback { get; } = new("DejaVu Sans", "DejaVuSans", 400);

    public static IReadOnlyList<Face> All { get; } = [Regular, SemiBold, Fallback];

    public string Family { get; }

    /// <summary>Name of the file without its ending.</summary>
    public string Name { get; }
    public int Weight { get; }
    public FontFile File { get; }

    /// <summary>This face, or the fallback where only that has the letter.</summary>
    public Face For(int codePoint) =>
        File.Glyph(codePoint) == 0 && Fallback.File.Glyph(codePoint) != 0 ? Fallback : this;

    private static byte[] Load(string name)
    {
        using var stream = typeof(Face).Assembly.GetManifestResourceStream($"Fonts/{name}.ttf")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
