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
            Blocks = ratio == Rational.One ? counted.Blocks : [.. counted.Blocks.Select(block => BlockDesigns.Scaled(block, ratio))],
            Setting = counted.Setting with { Sashing = sashing },
            Borders = [.. choice.Borders.Select((border, i) => BorderAt(counted, i) with { Width = border })],
        };
    }

    /// <summary>Width and height of a center with borders of these widths round it; null where the units of one can't come out.</summary>
    public static (Length Width, Length Height)? Framed(Quilt quilt, ImmutableArray<Length> borders, Length width, Length height)
    {
        for (var i = 0; i < borders.Length; i++)
        {
            var border = BorderAt(quilt, i) with { Width = borders[i] };
            if (border.Units is { } units)
            {
                border = border with { Units = units with { Across = null, Down = null } };
                if (UnitFit.Of(border, quilt.Block(units.Block), width, height) is not { } fit)
                {
                    return null;
                }

                (width, height) = (width + (fit.CopingAcross * 2), height + (fit.CopingDown * 2));
            }

            (width, height) = (width + (border.Width * 2), height + (border.Width * 2));
        }

        return (width, height);
    }

    public static Block FirstBlock(Quilt quilt) => quilt.Block(quilt.Setting.Cells[0][0].Block);

    private static Border BorderAt(Quilt quilt, int index) =>
        index < quilt.Borders.Length ? quilt.Borders[index]
        : quilt.Borders.Length > 0 ? quilt.Borders[^1] with { Style = BorderStyle.Butted, Corner = null, Units = null }
        : new(Length.Inch, quilt.Binding.Role, BorderStyle.Butted, null, StripGrain.Crosswise);
}
