using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>A quilt with another outermost border; what lies inside it stays.</summary>
public static class BorderChanges
{
    private static readonly Length UsualInches = Length.Inches(3);
    private static readonly Length UsualCentimeters = Length.Millimeters(75);

    /// <summary>
    /// One border more: as wide as the outermost, and of the role before it, so that neighbors differ where the quilt
    /// has more than one role. Null where a quilt may have no more.
    /// </summary>
    public static Quilt? Added(Quilt quilt)
    {
        if (quilt.Borders.Length >= QuiltLimits.Borders)
        {
            return null;
        }

        var last = quilt.Borders.LastOrDefault();
        var width = last?.Width ?? (quilt.Units == LengthUnit.Inch ? UsualInches : UsualCentimeters);
        return quilt with { Borders = quilt.Borders.Add(new(width, RoleBeside(quilt, last?.Role), BorderStyle.Butted, null, StripGrain.Crosswise)) };
    }

    /// <summary>Null where there is none to leave out.</summary>
    public static Quilt? Dropped(Quilt quilt) =>
        quilt.Borders.IsEmpty ? null : quilt with { Borders = quilt.Borders.RemoveAt(quilt.Borders.Length - 1) };

    /// <summary>The outermost border with other corners; null where there is no border.</summary>
    public static Quilt? Cornered(Quilt quilt, BorderStyle style)
    {
        if (quilt.Borders.LastOrDefault() is not { } last)
        {
            return null;
        }

        var corner = style == BorderStyle.CornerSquares ? last.Corner ?? RoleBeside(quilt, last.Role) : null;
        return quilt with { Borders = quilt.Borders.SetItem(quilt.Borders.Length - 1, last with { Style = style, Corner = corner }) };
    }

    // A role of the top: the darkest there is beside the one that is taken, since borders frame.
    private static string RoleBeside(Quilt quilt, string? taken)
    {
        var value = SettingChanges.ValueOf(quilt);
        var roles = quilt.Blocks.SelectMany(block => block.Patches).Select(patch => patch.Role).Distinct(StringComparer.Ordinal);
        return roles.Where(role => role != taken).OrderByDescending(role => value(role)).FirstOrDefault() ?? taken ?? quilt.Binding.Role;
    }
}
