using PdfSharp.Fonts;

namespace Kitwright.Print.Fonts;

/// <summary>Gives the PDF library our own font files, and only these.</summary>
internal sealed class FaceResolver : IFontResolver
{
    private static readonly Lock Once = new();

    /// <summary>The library holds one resolver for the whole process.</summary>
    public static void Install()
    {
        lock (Once)
        {
            GlobalFontSettings.FontResolver ??= new FaceResolver();
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName);

    public byte[]? GetFont(string faceName) => FeatureFaces.Bytes(faceName);
}
