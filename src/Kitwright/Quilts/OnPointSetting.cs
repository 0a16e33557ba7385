using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>Square blocks turned by 45 degrees, with setting triangles at the edges and in the corners.</summary>
/// <remarks>
/// Rows of C and of C − 1 blocks alternate, R of the longer ones; all of them count from the top, so that rows 1, 3, 5 …
/// are the longer ones. The blocks measure C·s√2 by R·s√2, which no ruler has: the center is that rounded up to the
/// ruler step, and the blocks float by half the difference on each side, so that no seam allowance reaches a point.
/// Seams between diagonal rows run from lower left to upper right, on through the float to the edge.
/// Ids are <c>frame/setting/top/1</c> (from the left), <c>left/1</c> (from the top) and so on, and
/// <c>frame/setting/corner/top-left</c>.
/// </remarks>
internal sealed class OnPointSetting
{
    private readonly Quilt quilt;
    private readonly Setting setting;
    private readonly Length around;
    private readonly Length side;
    private readonly Length width;
    private readonly Length height;

    // The diagonal of a block; the blocks' outermost points; how far they stay off the center's edges.
    private readonly Surd diagonal;
    private readonly Surd right;
    private readonly Surd top;
    private readonly Surd floatX;
    private readonly Surd floatY;

    private OnPointSetting(Quilt quilt, Length around)
    {
        this.quilt = quilt;
        this.around = around;
        setting = quilt.Setting;
        side = quilt.CellSize(0, 0).Width;
        diagonal = Surd.OfRoot2(side.InInches);
        right = diagonal * setting.Columns;
        top = diagonal * setting.Rows;
        width = right.RoundUpTo(quilt.RulerStep);
        height = top.RoundUpTo(quilt.RulerStep);
        floatX = (width - right) / 2;
        floatY = (height - top) / 2;
    }

    public static Center Lay(Quilt quilt, Length around) => new OnPointSetting(quilt, around).Lay();

    private Center Lay() =>
        new(new(around, around, around + width, around + height), [.. Placements()], [.. Triangles()]);

    private IEnumerable<Placement> Placements()
    {
        for (var row = 0; row < (2 * setting.Rows) - 1; row++)
        {
            var isShort = row % 2 == 1;
            for (var column = 0; column < setting.Columns - (isShort ? 1 : 0); column++)
            {
                var cell = setting.CellAt(row, column);
                var middle = At(
                    diagonal * new Rational((2 * column) + (isShort ? 2 : 1), 2),
                    top - (diagonal * new Rational(row + 1, 2))
                );
                var motion = Cells
                    .Turned(cell.Turns, side, side)
                    .Then(Motion.Shift(-side / 2, -side / 2))
                    .Then(Motion.EighthTurns(1))
                    .Then(Motion.Shift(middle.X, middle.Y));
                yield return new(new($"place/r{row + 1}/c{column + 1}"), cell.DesignId(), motion);
            }
        }
    }

    private IEnumerable<Patch> Triangles()
    {
        var half = diagonal / 2;
        for (var i = 0; i < setting.Columns - 1; i++)
        {
            Surd from = half + (diagonal * i),
                to = from + diagonal;
            yield return Triangle($"top/{i + 1}", (from + half, top - half), (to + floatY, top + floatY), (from + floatY, top + floatY), (from, top));
            yield return Triangle($"bottom/{i + 1}", (from + half, half), (from - floatY, -floatY), (to - floatY, -floatY), (to, 0));
        }

        for (var i = 0; i < setting.Rows - 1; i++)
        {
            Surd to = top - half - (diagonal * i),
                from = to - diagonal;
            yield return Triangle($"left/{i + 1}", (half, from + half), (0, to), (-floatX, to - floatX), (-floatX, from - floatX));
            yield return Triangle($"right/{i + 1}", (right - half, from + half), (right, from), (right + floatX, from + floatX), (right + floatX, to + floatX));
        }

        yield return Triangle("corner/top-left", (-floatX, top - half - floatX), (half + floatY, top + floatY), (-floatX, top + floatY));
        yield return Triangle(
            "corner/top-right",
            (right, top - half),
            (right + floatX, top - half + floatX),
            (right + floatX, top + floatY),
            (right - half + floatY, top + floatY),
            (right - half, top)
        );
        yield return Triangle(
            "corner/bottom-left",
            (half, 0),
            (0, half),
            (-floatX, half - floatX),
            (-floatX, -floatY),
            (half - floatY, -floatY)
        );
        yield return Triangle("corner/bottom-right", (right - half - floatY, -floatY), (right + floatX, -floatY), (right + floatX, half + floatX));
    }

    private Patch Triangle(string id, params ReadOnlySpan<(Surd X, Surd Y)> corners)
    {
        var points = ImmutableArray.CreateBuilder<Point>(corners.Length);
        foreach (var (x, y) in corners)
        {
            // Without a float, the ends of a leg and of its way through the float are one point.
            if (!points.Contains(At(x, y)))
            {
                points.Add(At(x, y));
            }
        }

        return new(new($"frame/setting/{id}"), setting.Triangles!, new(points.ToImmutable()));
    }

    // From the lower left corner of the blocks' own rectangle to quilt coordinates.
    private Point At(Surd x, Surd y) => new(x + floatX + around, y + floatY + around);
}
