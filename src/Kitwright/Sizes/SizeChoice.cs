using System.Collections.Immutable;
using System.Globalization;
using Kitwright.Measure;

namespace Kitwright.Sizes;

/// <summary>What decides the size of a quilt.</summary>
/// <param name="Block">Finished width of the first block; all others keep their proportion to it.</param>
/// <param name="Sash">Null where the blocks lie edge to edge.</param>
/// <param name="Borders">From the inside out.</param>
public sealed record SizeChoice(int Columns, int Rows, Length Block, Length? Sash, ImmutableArray<Length> Borders)
{
    /// <summary>As short text, for addresses: <c>6.8.12.1 1/2.2.5</c>; a hyphen stands for no sashing.</summary>
    public string Text =>
        string.Join(
            '.',
            [
                Columns.ToString(CultureInfo.InvariantCulture),
                Rows.ToString(CultureInfo.InvariantCulture),
                LengthText.Inches(Block),
                Sash is { } sash ? LengthText.Inches(sash) : "-",
                .. Borders.Select(LengthText.Inches),
            ]
        );

    /// <summary>Null where the text is no choice.</summary>
    public static SizeChoice? Parse(string text)
    {
        var parts = text.Split('.');
        if (
            parts.Length < 4
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var columns)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var rows)
            || columns is < 1 or > Quilts.QuiltLimits.CellsAcross
            || rows is < 1 or > Quilts.QuiltLimits.CellsAcross
        )
        {
            return null;
        }

        var lengths = parts[2..].Where(p => p != "-").Select(p => LengthText.TryParse(p, out var l) && l.Sign > 0 ? l : (Length?)null).ToList();
        if (lengths.Contains(null) || parts[2] == "-")
        {
            return null;
        }

        var hasSash = parts[3] != "-";
        return new(columns, rows, lengths[0]!.Value, hasSash ? lengths[1] : null, [.. lengths.Skip(hasSash ? 2 : 1).Select(l => l!.Value)]);
    }

    public bool Equals(SizeChoice? other) => other is not null && Text == other.Text;

    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);
}
