using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>How the units of a border meet what lies inside it: all exact.</summary>
/// <param name="Unit">Finished length of one unit along its side.</param>
/// <param name="Across">Units along the top and along the bottom.</param>
/// <param name="Down">Units along either side.</param>
/// <param name="CopingAcross">Finished width of the coping strip at the left and at the right; zero for none.</param>
/// <param name="CopingDown">Finished width of the coping strip above and below.</param>
public sealed record UnitFit(Length Unit, int Across, int Down, Length CopingAcross, Length CopingDown)
{
    /// <summary>No strip is sewn narrower: it would be all seam (common practice, no source).</summary>
    public static readonly Length LeastCoping = Length.Inches(0, 1, 2);

    /// <summary>Where coping strips lie, as words choose by it: even, both, left, above or none.</summary>
    public string Copes =>
        (CopingAcross.Sign, CopingDown.Sign) switch
        {
            (0, 0) => "none",
            (_, 0) => "left",
            (0, _) => "above",
            _ => CopingAcross == CopingDown ? "even" : "both",
        };

    /// <summary>The fit round a rectangle; null where the units can't come out as the border asks.</summary>
    /// <param name="block">The block that is the unit, at any size.</param>
    public static UnitFit? Of(Border border, Block block, Length width, Length height) => Try(border, block, width, height).Fit;

    /// <summary>The fit, or the run that fails: the length that it must reach, and whether it runs across.</summary>
    internal static (UnitFit? Fit, Length Need, bool IsAcross) Try(Border border, Block block, Length width, Length height)
    {
        var units = border.Units!;
        var unit = UnitLength(border.Width, units, block);
        // Where nothing lies in the corners, the runs of top and bottom reach into them.
        var across = border.Style == BorderStyle.Butted ? width + (border.Width * 2) : width;
        if (Run(unit, across, units.Across, units.Coping) is not { } top)
        {
            return (null, across, true);
        }

        return Run(unit, height, units.Down, units.Coping) is { } side
            ? (new(unit, top.Count, side.Count, top.Coping, side.Coping), height, false)
            : (null, height, false);
    }

    /// <summary>What one unit takes along its side where the border is so wide.</summary>
    public static Length UnitLength(Length width, BorderUnits units, Block block)
    {
        var (along, deep) = int.IsOddInteger(units.Turns) ? (block.Height, block.Width) : (block.Width, block.Height);
        return width * (along / deep);
    }

    private static (int Count, Length Coping)? Run(Length unit, Length need, int? wanted, bool coping)
    {
        var fewest = (need / unit).Ceiling();
        if (fewest > QuiltLimits.BorderUnits)
        {
            return null;
        }

        // Two units more than the fewest leave room for any coping strip, unless units are narrower than one.
        for (var count = wanted ?? Math.Max(1, (int)fewest); count <= QuiltLimits.BorderUnits; count++)
        {
            var left = ((unit * count) - need) / 2;
            if (left.Sign == 0 || (coping && left >= LeastCoping))
            {
                return (count, left);
            }

            if (wanted is not null || !coping)
            {
                return null;
            }
        }

        return null;
    }
}
