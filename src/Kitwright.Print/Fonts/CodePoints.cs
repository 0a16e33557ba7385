namespace Kitwright.Print.Fonts;

/// <summary>The cmap table: glyphs by Unicode code point (formats 4 and 12).</summary>
internal static class CodePoints
{
    public static Dictionary<int, ushort> Read(FontTable cmap)
    {
        var glyphs = new Dictionary<int, ushort>();
        for (var i = 0; i < cmap.U16(2); i++)
        {
            var record = 4 + (8 * i);
            var subtable = cmap.From(cmap.U32(record + 4));
            // Platform 0 is Unicode; 3 with encoding 1 or 10 is Unicode on Windows.
            if (cmap.U16(record) == 0 || (cmap.U16(record) == 3 && cmap.U16(record + 2) is 1 or 10))
            {
                Add(glyphs, subtable);
            }
        }

        return glyphs;
    }

    private static void Add(Dictionary<int, ushort> glyphs, FontTable table)
    {
        switch (table.U16(0))
        {
            case 4:
                AddSegments(glyphs, table);
                break;
            case 12:
                AddGroups(glyphs, table);
                break;
        }
    }

    private static void AddSegments(Dictionary<int, ushort> glyphs, FontTable table)
    {
        int twice = table.U16(6),
            ends = 14,
            starts = ends + twice + 2,
            deltas = starts + twice,
            offsets = deltas + twice;
        for (var s = 0; s < twice; s += 2)
        {
            int end = table.U16(ends + s),
                offset = table.U16(offsets + s);
            for (int code = table.U16(starts + s); code <= end && code != 0xFFFF; code++)
            {
                var start = table.U16(starts + s);
                int glyph = offset == 0 ? code : table.U16(offsets + s + offset + (2 * (code - start)));
                if (glyph != 0)
                {
                    glyphs[code] = (ushort)((glyph + table.I16(deltas + s)) & 0xFFFF);
                }
            }
        }
    }

    private static void AddGroups(Dictionary<int, ushort> glyphs, FontTable table)
    {
        for (var g = 0; g < table.U32(12); g++)
        {
            var group = 16 + (12 * g);
            for (int code = table.U32(group), glyph = table.U32(group + 8); code <= table.U32(group + 4); code++, glyph++)
            {
                glyphs[code] = (ushort)glyph;
            }
        }
    }
}
