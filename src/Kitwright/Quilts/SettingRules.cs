using Kitwright.Quilts.Reading;

namespace Kitwright.Quilts;

/// <summary>Whether blocks and borders can lie as the setting says.</summary>
internal static class SettingRules
{
    public static bool Check(Quilt quilt, Report report)
    {
        CheckBorders(quilt, report);
        BorderRules.CheckNames(quilt, report);
        CheckKind(quilt.Setting, report);
        if (CheckCells(quilt, report))
        {
            CheckSizes(quilt, report);
        }

        return !report.HasFault;
    }

    private static void CheckBorders(Quilt quilt, Report report)
    {
        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            var border = quilt.Borders[i];
            var corners = (border.Corner is null ? 0 : 1) + (border.Units?.Corner is null ? 0 : 1);
            if (corners != (border.Style == BorderStyle.CornerSquares ? 1 : 0))
            {
                var rule = corners == 0 ? "quilt.border.corner.missing" : "quilt.border.corner.extra";
                report.Fault(rule, $"/borders/{i}", ("border", i + 1));
            }
        }
    }

    private static void CheckKind(Setting setting, Report report)
    {
        if (setting.Kind == SettingKind.OnPoint != setting.Triangles is not null)
        {
            report.Fault(setting.Triangles is null ? "quilt.triangles.missing" : "quilt.triangles.extra", "/setting");
        }

        if (setting.Sashing is { Halved: true } sashing && (setting.Kind != SettingKind.OnPoint || !sashing.Outer))
        {
            report.Fault("quilt.halved", "/setting/sashing/halved");
        }

        var inLines = setting.Sashing is { Lines: not SashLines.Both };
        if (inLines && (setting.Kind != SettingKind.Straight || setting.Sashing!.Cornerstone is not null))
        {
            report.Fault("quilt.lines", "/setting/sashing/lines");
        }

        // Dropped blocks meet no others across: no level strip can run between rows.
        if (setting.HalfDrop is not null && (setting.Kind != SettingKind.Straight || setting.Rows < 2 || setting.Sashing is { Lines: not SashLines.Columns }))
        {
            report.Fault("quilt.drop", "/setting/halfDrop");
        }
    }

    private static bool CheckCells(Quilt quilt, Report report)
    {
        var setting = quilt.Setting;
        if ((long)setting.Columns * setting.Rows > QuiltLimits.PlacedBlocks)
        {
            report.Fault("quilt.blocks.many", "/setting", ("columns", setting.Columns), ("rows", setting.Rows), ("most", QuiltLimits.PlacedBlocks));
            return false;
        }

        for (var r = 0; r < setting.Cells.Length; r++)
        {
            if (setting.Cells[r].Length != setting.Cells[0].Length)
            {
                report.Fault("quilt.cells.ragged", $"/setting/cells/{r}", ("count", setting.Cells[r].Length), ("wanted", setting.Cells[0].Length));
            }

            for (var c = 0; c < setting.Cells[r].Length; c++)
            {
                var block = setting.Cells[r][c].Block;
                if (quilt.Blocks.All(b => b.Id != block))
                {
                    report.Fault("quilt.block.unknown", $"/setting/cells/{r}/{c}", ("block", block));
                }
            }
        }

        return !report.HasFault;
    }

    private static void CheckOneSquare(Quilt quilt, Report report)
    {
        var cells = quilt.Setting.Cells;
        var side = quilt.CellSize(0, 0).Width;
        for (var r = 0; r < cells.Length; r++)
        {
            for (var c = 0; c < cells[r].Length; c++)
            {
                if (quilt.CellSize(r, c) != (side, side))
                {
                    report.Fault("quilt.onpoint.square", $"/setting/cells/{r}/{c}", ("block", cells[r][c].Block));
                    return;
                }
            }
        }
    }

    // Blocks of a row are of one height and those of a column of one width; on point all are one square.
    private static void CheckSizes(Quilt quilt, Report report)
    {
        var setting = quilt.Setting;
        if (setting.Kind == SettingKind.OnPoint)
        {
            CheckOneSquare(quilt, report);
            return;
        }

        for (var r = 0; r < setting.Rows; r++)
        {
            for (var c = 0; c < setting.Columns; c++)
            {
                var size = quilt.CellSize(r, c);
                var fits =
                    (setting.HalfDrop is null || size.Height == quilt.CellSize(0, 0).Height)
                    && size.Height == quilt.CellSize(r, 0).Height && size.Width == quilt.CellSize(0, c).Width;
                if (!fits)
                {
                    var place = $"/setting/cells/{r % setting.Cells.Length}/{c % setting.Cells[0].Length}";
                    report.Fault("quilt.cell.size", place, ("block", setting.CellAt(r, c).Block), ("row", r + 1), ("column", c + 1));
                    return;
                }
            }
        }
    }
}
