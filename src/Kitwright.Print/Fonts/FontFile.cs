namespace Kitwright.Print.Fonts;

/// <summary>
/// What setting text needs of a TrueType file: glyphs by code point, their advances and the single substitutions of
/// its features. Kerning is not read.
/// </summary>
/// <remarks>
/// ISO/IEC 14496-22 (Open Font Format), tables head, hhea, hmtx, OS/2, cmap and GSUB, from memory. The files are our
/// own, so a broken one throws.
/// </remarks>
public sealed class FontFile
{
    private readonly Dictionary<int, ushort> glyphs;
    private readonly double[] advances;
    private readonly SingleSubstitutions substitutions;

    private FontFile(byte[] bytes)
    {
        Bytes = bytes;
        var tables = FontTable.All(bytes);
        double unitsPerEm = tables["head"].U16(18);
        var hhea = tables["hhea"];
        Ascender = hhea.I16(4) / unitsPerEm;
        Descender = -hhea.I16(6) / unitsPerEm;
        CapHeight = tables["OS/2"].U16(0) < 2 ? 0.7 : tables["OS/2"].I16(88) / unitsPerEm;
        advances = new double[hhea.U16(34)];
        for (var i = 0; i < advances.Length; i++)
        {
            advances[i] = tables["hmtx"].U16(4 * i) / unitsPerEm;
        }

        glyphs = CodePoints.Read(tables["cmap"]);
        substitutions = SingleSubstitutions.Read(tables["GSUB"]);
    }

    public byte[] Bytes { get; }

    /// <summary>Ems above the baseline that the tallest letters reach.</summary>
    public double Ascender { get; }

    /// <summary>Ems below the baseline, positive.</summary>
    public double Descender { get; }

    /// <summary>Height of capitals and figures in ems.</summary>
    public double CapHeight { get; }

    public static FontFile Parse(byte[] bytes) => new(bytes);

    /// <summary>The glyph of a code point; 0 where the file has none.</summary>
    public ushort Glyph(int codePoint) => glyphs.GetValueOrDefault(codePoint);

    /// <summary>The glyph that a feature (<c>tnum</c>, <c>numr</c>, <c>dnom</c>) puts in another's place.</summary>
    public ushort Substitute(string feature, ushort glyph) => substitutions.Of(feature, glyph);

    /// <summary>Advance in ems; glyphs beyond the last full record share its advance.</summary>
    public double Advance(ushort glyph) => advances[Math.Min(glyph, advances.Length - 1)];
}
