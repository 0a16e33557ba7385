using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;

namespace Kitwright.Sizes;

/// <summary>A quilt brought to another size.</summary>
public static class Resizing
{
    public static SizeChoice ChoiceOf(Quilt quilt) =>
        new(
            quilt.Setting.Columns,
            quilt.Setting.Rows,
            FirstBlock(quilt).Width,
            quilt.Setting.Sashing?.Width,
            [.. quilt.Borders.Select(b => b.Width)]
        );

    /// <summary>The quilt by a choice: counts, then blocks, sashing and borders; a classic figure is drawn anew.</summary>
    /// <remarks>A border that the quilt lacks takes the role of the outermost one, or of the binding.</remarks>
    public static Quilt Of(Quilt quilt, SizeChoice choice)
    {
        var counted = SettingChanges.Counted(quilt, choice.Columns, choice.Rows);
        var ratio = choice.Block / FirstBlock(quilt).Width;
        var sashing = counted.Setting.Sashing is { } sash && choice.Sash is { } width ? sash with { Width = width } : counted.Setting.Sashing;
        return counted with
        {
            Blocks = ratio == Rational.One ? counted.Blocks : [.. counted.Blocks.Select(block => Scaled(block, ratio))],
            Setting = counted.Setting with { Sashing = sashing },
            Borders = [.. choice.Borders.Select((border, i) => BorderAt(quilt, i) with { Width = border })],
        };
    }

    /// <summary>Every part in proportion.</summary>
    public static Block Scaled(Block block, Rational ratio) =>
        block with
        {
            Width = block.Width * ratio,
            Height = block.Height * ratio,
            Patches =
            [
                .. block.Patches.Select(patch =>
                    patch with
                    {
                        Corners = [.. patch.Corners.Select(corner => corner * ratio)],
                        Arcs = [.. patch.Arcs.Select(arc => arc with { Center = arc.Center * ratio })],
                    }
                ),
            ],
        };

    public static Block FirstBlock(Quilt quilt) => quilt.Block(quilt.Setting.Cells[0][0].Block);

    private static Border BorderAt(Quilt quilt, int index) =>
        index < quilt.Borders.Length ? quilt.Borders[index]
        : quilt.Borders.Length > 0 ? quilt.Borders[^1] with { Style = BorderStyle.Butted, Corner = null }
        : new(Length.Inch, quilt.Binding.Role, BorderStyle.Butted, null, StripGrain.Crosswise);
}
