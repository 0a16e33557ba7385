using System.Collections.Immutable;
using Kitwright.Measure;

namespace Kitwright.Quilts;

/// <summary>One way for the units of a border to come out.</summary>
/// <param name="Width">Finished width of the border, on the ruler.</param>
public sealed record BorderWay(Length Width, UnitFit Fit);

/// <summary>
/// Ways for a border to come out from units: how many, of what size on the ruler, with what coping strips. Small changes
/// of the width come before large ones, no coping before some, equal strips before unequal ones.
/// </summary>
public static class BorderProposals
{
    private const int Most = 6;
    private const int MoreUnits = 3;
    private const int MostTried = 200;

    /// <param name="block">The block that is the unit, at any size.</param>
    /// <param name="width">Of what lies inside the border.</param>
    public static ImmutableArray<BorderWay> Of(Border border, Block block, Length width, Length height, Length rulerStep) =>
        [
            .. Widths(border, block, rulerStep)
                .SelectMany(wide => Ways(border with { Width = wide }, block, width, height))
                .Where(way => IsOn(rulerStep, way.Fit.CopingAcross) && IsOn(rulerStep, way.Fit.CopingDown))
                .DistinctBy(way => (way.Width, way.Fit.Across, way.Fit.Down))
                .OrderBy(way => Cost(border, way))
                .Take(Most),
        ];

    private static bool IsOn(Length rulerStep, Length width) => (width / rulerStep).IsInteger;

    /// <param name="border">Counted from 0; what lies inside it must come out.</param>
    public static ImmutableArray<BorderWay> In(Quilt quilt, int border)
    {
        var inside = Layout.Of(quilt with { Borders = quilt.Borders[..border] });
        var (pieced, block) = (quilt.Borders[border], quilt.Block(quilt.Borders[border].Units!.Block));
        return Of(pieced, block, inside.Width, inside.Height, quilt.RulerStep);
    }

    private static IEnumerable<Length> Widths(Border border, Block block, Length step)
    {
        yield return border.Width;
        // Every line of the unit's grid falls on the ruler, so that pieces are cut by it.
        var lines = int.IsOddInteger(border.Units!.Turns) ? block.Grid.Columns : block.Grid.Rows;
        var grid = step * lines;
        var first = (border.Width * new Rational(2, 3) / grid).Ceiling();
        for (var i = 0; i < MostTried && grid * (first + i) <= border.Width * new Rational(3, 2); i++)
        {
            if ((first + i).Sign > 0)
            {
                yield return grid * (first + i);
            }
        }
    }

    private static IEnumerable<BorderWay> Ways(Border border, Block block, Length width, Length height)
    {
        var free = border with { Units = border.Units! with { Across = null, Down = null, Coping = true } };
        if (UnitFit.Of(free, block, width, height) is not { } fewest)
        {
            yield break;
        }

        for (var across = fewest.Across; across < fewest.Across + MoreUnits; across++)
        {
            for (var down = fewest.Down; down < fewest.Down + MoreUnits; down++)
            {
                if (UnitFit.Of(free with { Units = free.Units! with { Across = across, Down = down } }, block, width, height) is { } fit)
                {
                    yield return new(border.Width, fit);
                }
            }
        }
    }

    private static Rational Cost(Border border, BorderWay way)
    {
        var moved = Rational.Abs((way.Width - border.Width) / border.Width) * 8;
        var coping = (way.Fit.CopingAcross + way.Fit.CopingDown) / border.Width;
        var unequal = Rational.Abs((way.Fit.CopingAcross - way.Fit.CopingDown) / border.Width);
        return moved + coping + unequal + (coping.Sign > 0 ? new Rational(1, 2) : Rational.Zero);
    }
}
