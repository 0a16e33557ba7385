using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Quilts;

/// <summary>Blocks in upright rows and columns, edge to edge or with sashing.</summary>
/// <remarks>
/// Sash <c>frame/sash/h/R/C</c> lies above the block of row R and column C (R = rows + 1: below the last row);
/// <c>frame/sash/v/R/C</c> to the left of it; <c>frame/post/R/C</c> where the two meet. Without cornerstones a
/// horizontal sash runs through as <c>frame/sash/h/R/1</c>; an upright one between columns only as
/// <c>frame/sash/v/1/C</c>. <c>frame/drop/top/C</c> and <c>frame/drop/bottom/C</c> fill the ends of a dropped column.
/// </remarks>
internal sealed class StraightSetting
{
    private readonly Quilt quilt;
    private readonly Sashing? sashing;
    private readonly Span[] columns;
    private readonly Span[] rows;
    private readonly Span[] upright;
    private readonly Span[] level;
    private readonly ImmutableArray<Patch>.Builder patches = ImmutableArray.CreateBuilder<Patch>();

    private StraightSetting(Quilt quilt, Length around)
    {
        this.quilt = quilt;
        sashing = quilt.Setting.Sashing;
        var setting = quilt.Setting;
        var widths = Enumerable.Range(0, setting.Columns).Select(c => quilt.CellSize(0, c).Width).ToArray();
        var heights = Enumerable.Range(0, setting.Rows).Select(r => quilt.CellSize(r, 0).Height).Reverse().ToArray();
        (columns, upright) = Chain(widths, around, sashing?.Lines != SashLines.Rows);
        (rows, level) = Chain(heights, around, sashing?.Lines != SashLines.Columns);
        // Rows count from the top, y runs from the bottom.
        Array.Reverse(rows);
        Array.Reverse(level);
    }

    /// <summary>From <paramref name="From"/> to <paramref name="To"/> along one axis.</summary>
    private readonly record struct Span(Length From, Length To);

    public static Center Lay(Quilt quilt, Length around) => new StraightSetting(quilt, around).Lay();

    // The spans of the blocks along one axis, and those of the sashes before, between and after them: a sash that is
    // not there has no width.
    private (Span[] Blocks, Span[] Sashes) Chain(Length[] sizes, Length start, bool sashed)
    {
        var width = sashed && sashing is not null ? sashing.Width : Length.Zero;
        var outer = sashing is { Outer: true } ? width : Length.Zero;
        var blocks = new Span[sizes.Length];
        var sashes = new Span[sizes.Length + 1];
        var at = start;
        for (var i = 0; i < sizes.Length; i++)
        {
            var sash = i == 0 ? outer : width;
            sashes[i] = new(at, at + sash);
            blocks[i] = new(at + sash, at + sash + sizes[i]);
            at = blocks[i].To;
        }

        sashes[^1] = new(at, at + outer);
        return (blocks, sashes);
    }

    private Center Lay()
    {
        var placements = ImmutableArray.CreateBuilder<Placement>(rows.Length * columns.Length);
        for (var r = 0; r < rows.Length; r++)
        {
            for (var c = 0; c < columns.Length; c++)
            {
                if (!IsDropped(c) || r < rows.Length - 1)
                {
                    placements.Add(Place(r, c));
                }
            }
        }

        AddDropEnds();

        if (sashing is not null)
        {
            AddSashes(sashing);
        }

        var shape = new Frame(upright[0].From, level[^1].From, upright[^1].To, level[0].To);
        return new(shape, placements.ToImmutable(), patches.ToImmutable());
    }

    private Placement Place(int row, int column)
    {
        var cell = quilt.Setting.CellAt(row, column);
        var block = quilt.Block(cell.Block);
        return new(
            new($"place/r{row + 1}/c{column + 1}"),
            cell.DesignId(),
            Cells.Turned(cell.Turns, block.Width, block.Height).Then(Motion.Shift(columns[column].From, IsDropped(column) ? rows[row].From - HalfBlock : rows[row].From))
        );
    }

    private bool IsDropped(int column) => quilt.Setting.HalfDrop is not null && int.IsOddInteger(column);

    private Length HalfBlock => (rows[0].To - rows[0].From) / 2;

    private void AddDropEnds()
    {
        if (quilt.Setting.HalfDrop is not { } role)
        {
            return;
        }

        for (var c = 1; c < columns.Length; c += 2)
        {
            Add($"frame/drop/top/{c + 1}", role, columns[c], new(rows[0].To - HalfBlock, rows[0].To));
            Add($"frame/drop/bottom/{c + 1}", role, columns[c], new(rows[^1].From, rows[^1].From + HalfBlock));
        }
    }

    private void AddSashes(Sashing sash)
    {
        if (sash.Lines == SashLines.Columns)
        {
            for (var c = 0; c <= columns.Length; c++)
            {
                Add($"frame/sash/v/1/{c + 1}", sash.Role, upright[c], new(level[^1].From, level[0].To));
            }

            return;
        }

        for (var r = 0; r <= rows.Length; r++)
        {
            if (sash.Cornerstone is null)
            {
                Add($"frame/sash/h/{r + 1}/1", sash.Role, new(upright[0].From, upright[^1].To), level[r]);
            }

            for (var c = 0; c <= columns.Length; c++)
            {
                if (sash.Cornerstone is { } post)
                {
                    Add($"frame/post/{r + 1}/{c + 1}", post, upright[c], level[r]);
                    if (c < columns.Length)
                    {
                        Add($"frame/sash/h/{r + 1}/{c + 1}", sash.Role, columns[c], level[r]);
                    }
                }

                if (r < rows.Length)
                {
                    Add($"frame/sash/v/{r + 1}/{c + 1}", sash.Role, upright[c], rows[r]);
                }
            }
        }
    }

    private void Add(string id, string role, Span across, Span up)
    {
        if (across.From < across.To && up.From < up.To)
        {
            patches.Add(new(new(id), role, Polygon.Rectangle(across.From, up.From, across.To, up.To)));
        }
    }
}
