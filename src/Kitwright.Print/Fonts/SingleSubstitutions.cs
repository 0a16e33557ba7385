namespace Kitwright.Print.Fonts;

/// <summary>The GSUB features that put one glyph in another's place (lookup type 1, also by way of type 7).</summary>
internal sealed class SingleSubstitutions
{
    private readonly Dictionary<(string Feature, ushort Glyph), ushort> map = [];

    public ushort Of(string feature, ushort glyph) => map.GetValueOrDefault((feature, glyph), glyph);

    public static SingleSubstitutions Read(FontTable gsub)
    {
        var read = new SingleSubstitutions();
        FontTable features = gsub.From(gsub.U16(6)),
            lookups = gsub.From(gsub.U16(8));
        for (var f = 0; f < features.U16(0); f++)
        {
            var record = 2 + (6 * f);
            var feature = features.From(features.U16(record + 4));
            for (var i = 0; i < feature.U16(2); i++)
            {
                var lookup = lookups.From(lookups.U16(2 + (2 * feature.U16(4 + (2 * i)))));
                read.AddLookup(features.Tag(record), lookup);
            }
        }

        return read;
    }

    private void AddLookup(string feature, FontTable lookup)
    {
        for (var s = 0; s < lookup.U16(4); s++)
        {
            var subtable = lookup.From(lookup.U16(6 + (2 * s)));
            var type = lookup.U16(0);
            if (type == 7)
            {
                type = subtable.U16(2);
                subtable = subtable.From(subtable.U32(4));
            }

            if (type == 1)
            {
                AddSingle(feature, subtable);
            }
        }
    }

    // Format 1 shifts all covered glyphs by one delta, format 2 lists the substitutes.
    private void AddSingle(string feature, FontTable subtable)
    {
        var index = 0;
        foreach (var glyph in Covered(subtable.From(subtable.U16(2))))
        {
            var substitute = subtable.U16(0) == 1 ? (ushort)((glyph + subtable.I16(4)) & 0xFFFF) : subtable.U16(6 + (2 * index));
            map.TryAdd((feature, glyph), substitute);
            index++;
        }
    }

    private static IEnumerable<ushort> Covered(FontTable coverage)
    {
        var count = coverage.U16(2);
        for (var i = 0; i < count; i++)
        {
            if (coverage.U16(0) == 1)
            {
                yield return coverage.U16(4 + (2 * i));
                continue;
            }

            for (int glyph = coverage.U16(4 + (6 * i)); glyph <= coverage.U16(6 + (6 * i)); glyph++)
            {
                yield return (ushort)glyph;
            }
        }
    }
}
