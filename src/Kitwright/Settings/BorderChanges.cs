using Kitwright.Blocks;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Settings;

/// <summary>A quilt with another border; what is not named stays. Borders are counted from 0, from the inside out.</summary>
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
    public static Quilt? Dropped(Quilt quilt) => Dropped(quilt, quilt.Borders.Length - 1);

    public static Quilt? Dropped(Quilt quilt, int border) =>
        At(quilt, border) is null ? null : WithUsedBlocks(quilt with { Borders = quilt.Borders.RemoveAt(border) });

    /// <summary>The outermost border with other corners; null where there is no border.</summary>
    public static Quilt? Cornered(Quilt quilt, BorderStyle style) => Cornered(quilt, quilt.Borders.Length - 1, style);

    /// <summary>Null where there is no such border, or its units allow no such corners.</summary>
    public static Quilt? Cornered(Quilt quilt, int border, BorderStyle style)
    {
        if (At(quilt, border) is not { } old || (old.Units is not null && style == BorderStyle.Mitered))
        {
            return null;
        }

        var corner = style == BorderStyle.CornerSquares ? old.Corner ?? RoleBeside(quilt, old.Role) : null;
        return With(quilt, border, old with { Style = style, Corner = corner, Units = old.Units is { } units ? Free(units) with { Corner = null } : null });
    }

    /// <summary>Its own unit in each corner; null where that is not square.</summary>
    public static Quilt? UnitCorners(Quilt quilt, int border) =>
        At(quilt, border) is { Units: { } units } old && quilt.Block(units.Block) is var block && block.Width == block.Height
            ? With(quilt, border, old with { Style = BorderStyle.CornerSquares, Corner = null, Units = Free(units) with { Corner = block.Id } })
            : null;

    /// <summary>Cut from plain strips.</summary>
    public static Quilt? Plain(Quilt quilt, int border) =>
        At(quilt, border) is { } old
            ? With(quilt, border, old with { Units = null, Style = old.Corner is null && old.Style == BorderStyle.CornerSquares ? BorderStyle.Butted : old.Style })
            : null;

    /// <summary>Pieced from a block of the quilt, or else of the book; null where neither has it.</summary>
    public static Quilt? Pieced(Quilt quilt, int border, string block)
    {
        if (At(quilt, border) is not { } old)
        {
            return null;
        }

        if (Holding(quilt, block) is not { } held)
        {
            return null;
        }

        quilt = held;
        var units = new BorderUnits(block, 0, null, true, null, null, FromMiddle: false);
        var style = old.Style == BorderStyle.Mitered || (old.Style == BorderStyle.CornerSquares && old.Corner is null) ? BorderStyle.Butted : old.Style;
        return With(quilt, border, old with { Style = style, Units = units });
    }

    /// <summary>Every second unit is a block of the quilt, or else of the book; null where neither has it, or the border is plain.</summary>
    /// <param name="block">Null for units that are all alike.</param>
    public static Quilt? Alternating(Quilt quilt, int border, string? block) =>
        At(quilt, border)?.Units is not { } units || units.Block == block ? null
        : block is null ? Changed(quilt, border, u => u with { Alternate = null })
        : Holding(quilt, block) is { } held ? Changed(held, border, u => u with { Alternate = block })
        : null;

    /// <summary>The quilt with a block of the book beside its own; null where neither has it.</summary>
    private static Quilt? Holding(Quilt quilt, string block) =>
        quilt.Blocks.Any(b => b.Id == block) ? quilt
        : BlockBook.Find(block) is { } book ? quilt with { Blocks = quilt.Blocks.Add(BookUnits.Of(book, quilt).Block) }
        : null;

    /// <summary>A pieced border with another answer about its units; null for a plain one.</summary>
    public static Quilt? Changed(Quilt quilt, int border, Func<BorderUnits, BorderUnits> change) =>
        At(quilt, border) is { Units: { } units } old ? With(quilt, border, old with { Units = change(Free(units)) }) : null;

    /// <summary>The width and the counts of a proposal.</summary>
    public static Quilt? Fitted(Quilt quilt, int border, Length width, int across, int down) =>
        At(quilt, border) is { Units: { } units } old && width.Sign > 0
            ? With(quilt, border, old with { Width = width, Units = units with { Across = across, Down = down, Coping = true } })
            : null;

    private static BorderUnits Free(BorderUnits units) => units with { Across = null, Down = null };

    private static Border? At(Quilt quilt, int border) => border >= 0 && border < quilt.Borders.Length ? quilt.Borders[border] : null;

    // Counts that were chosen further out were chosen for what lay inside them.
    private static Quilt With(Quilt quilt, int border, Border changed) =>
        WithUsedBlocks(
            quilt with
            {
                Borders =
                [
                    .. quilt.Borders.Select((old, i) => i == border ? changed : i > border && old.Units is { } units ? old with { Units = Free(units) } : old),
                ],
            }
        );

    // A block that came from the book for a border goes when no border or cell holds it any longer.
    private static Quilt WithUsedBlocks(Quilt quilt)
    {
        var held = quilt
            .Setting.Cells.SelectMany(row => row.Select(cell => cell.Block))
            .Concat(quilt.Borders.SelectMany(border => new[] { border.Units?.Block, border.Units?.Corner, border.Units?.Alternate }))
            .ToHashSet(StringComparer.Ordinal);
        return quilt with { Blocks = [.. quilt.Blocks.Where(block => held.Contains(block.Id) || !BookUnits.Usual.Contains(block.Id))] };
    }

    // A role of the top: the darkest there is beside the one that is taken, since borders frame.
    private static string RoleBeside(Quilt quilt, string? taken)
    {
        var value = SettingChanges.ValueOf(quilt);
        var roles = quilt.Blocks.SelectMany(block => block.Patches).Select(patch => patch.Role).Distinct(StringComparer.Ordinal);
        return roles.Where(role => role != taken).OrderByDescending(role => value(role)).FirstOrDefault() ?? taken ?? quilt.Binding.Role;
    }
}
